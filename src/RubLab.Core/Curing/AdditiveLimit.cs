using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Curing;

/// <summary>A legal level of one additive.</summary>
public sealed record AdditiveLimit
{
    public const string AnyProduct = "any";
    public const string OtherProduct = "other";
    public const string Bacon = "bacon";

    /// <summary>Its id, and that of the check made against it.</summary>
    public required string Id { get; init; }

    /// <summary>What is limited.</summary>
    public required string Title { get; init; }

    public required string Additive { get; init; }

    /// <summary>The methods it holds for; empty for any.</summary>
    public required IReadOnlyList<CuringMethod> Methods { get; init; }

    /// <summary>The products it holds for; <see cref="AnyProduct"/>, or <see cref="OtherProduct"/> for any named one but bacon.</summary>
    public required IReadOnlyList<string> Products { get; init; }

    public required LimitLevel Level { get; init; }

    /// <summary>Each salt counts by its own weight; otherwise potassium salts count as the sodium salt of as many molecules.</summary>
    public required bool CountsOwnWeight { get; init; }

    /// <summary>Low end of a level to be met; none for a cap.</summary>
    public required double? LowPartsPerMillion { get; init; }

    /// <summary>The cap, or the high end of a level to be met; none for a minimum.</summary>
    public required double? HighPartsPerMillion { get; init; }

    /// <summary>What the figures are of.</summary>
    public required LimitBase Base { get; init; }

    /// <summary>The alternative level that asks for this one too; none for a level of its own.</summary>
    public required string? AskedBy { get; init; }

    /// <summary>What to know when reading it.</summary>
    public required string Note { get; init; }

    public required Citation Citation { get; init; }

    /// <summary>It is of bacon, whose figures leave out the skin.</summary>
    public bool IsOfBacon => Products.Contains(Bacon);

    /// <summary>Whether it holds for a product. Where none is named it might be bacon, whose levels are the strictest.</summary>
    public bool HoldsFor(string? product) => Products.Any(named => named switch
    {
        AnyProduct => true,
        OtherProduct => product != Bacon,
        Bacon => product is null or Bacon,
        _ => named == product,
    });

    /// <summary>Whether it is a level of a product that somebody named.</summary>
    public bool IsNamedFor(string? product) => product is not null && HoldsFor(product);

    /// <summary>Whether it holds for an additive that got in as this load did.</summary>
    public bool HoldsFor(AdditiveLoad load) => Methods.Count == 0 || Methods.Any(load.IsBy);

    /// <summary>A load as this limit counts it.</summary>
    public Band Counted(AdditiveLoad load) => CountsOwnWeight ? load.OwnPartsPerMillion : load.PartsPerMillion;

    /// <summary>What a gram of a formula's line brings of the additive, grams as this limit counts it.</summary>
    public double GramsPerGram(FormulaLine line) =>
        line.AdditivesGramsPerGram().Where(a => a.Additive == Additive).Sum(a => CountsOwnWeight ? a.OwnGramsPerGram : a.GramsPerGram);

    /// <summary>A share as this limit counts it.</summary>
    public Band Counted(AdditiveShare share) => CountsOwnWeight ? share.OwnPartsPerMillion : share.PartsPerMillion;
}
