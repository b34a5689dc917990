namespace RubLab.Core.Catalogues;

/// <summary>The files an edition of the reference data consists of, for hosts that fetch them.</summary>
public static class SeedFiles
{
    public static IReadOnlyList<string> Names { get; } =
    [
        "VERSION", "sources.csv", "constants.csv", "ingredients.csv", "forms.csv", "measures.csv", "sieves.csv", "powder-flow.csv",
        "cuts.csv", "cut-composition.csv", "trim-losses.csv", "cut-shapes.csv", "bone.csv", "added-solution.csv", "cooking-yields.csv", "cooking-retention.csv",
        "salt-ranges.csv", "sodium-references.csv", "sodium-claims.csv", "reference-amounts.csv", "findings.csv", "cautions.csv",
    ];
}
