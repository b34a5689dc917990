using RubLab.Core.Quantities;

namespace RubLab.Core.Sources;

/// <summary>A band from outside with its source. The unit is in the name of the member that holds it.</summary>
public sealed record Cited(Band Band, Citation Citation);
