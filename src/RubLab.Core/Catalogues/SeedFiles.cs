namespace RubLab.Core.Catalogues;

/// <summary>The files an edition of the reference data consists of, for hosts that fetch them.</summary>
public static class SeedFiles
{
    public static IReadOnlyList<string> Names { get; } =
    [
        "VERSION", "sources.csv", "constants.csv", "ingredients.csv", "forms.csv", "measures.csv", "piece-measures.csv", "sieves.csv", "powder-flow.csv",
        "cuts.csv", "cut-composition.csv", "trim-losses.csv", "purchase-yields.csv", "portion-weights.csv", "piece-weights.csv", "currencies.csv",
        "cut-shapes.csv", "bone.csv", "added-solution.csv", "cooking-yields.csv", "cooking-retention.csv",
        "additive-limits.csv", "additive-contents.csv", "salt-ranges.csv", "sodium-references.csv", "sodium-claims.csv", "reference-amounts.csv",
        "diffusivities.csv", "water-viscosity.csv", "salt-solutions.csv", "salt-solubilities.csv", "findings.csv", "cautions.csv",
    ];
}
