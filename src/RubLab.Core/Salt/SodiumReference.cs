using RubLab.Core.Sources;

namespace RubLab.Core.Salt;

/// <summary>A daily sodium figure of an authority, with the guide for "low" and "high" where it gives one.</summary>
public sealed record SodiumReference(
    string Id, string Name, double SodiumMilligrams, string Per, double? LowPercent, double? HighPercent, Citation Citation);
