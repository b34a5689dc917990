using RubLab.Core.Sources;

namespace RubLab.Core.Sauces;

/// <summary>How much of a kind of food a label's figures stand on.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">The kind of food.</param>
/// <param name="Grams">As a weight; none where it is a volume.</param>
/// <param name="Millilitres">As a volume; none where it is a weight or only a household measure.</param>
/// <param name="Citation">Source, locator and confidence.</param>
public sealed record ReferenceAmount(string Id, string Name, double? Grams, double? Millilitres, Citation Citation);
