using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Formulas;

/// <summary>A formula as a cook writes it. Stored exactly like this.</summary>
public sealed record FormulaRequest
{
    /// <summary>The formula's name, at most 200 characters.</summary>
    public string? Name { get; init; }

    /// <summary>dry-brine, rub, slather, mop or sauce; injection and soak are refused by this version.</summary>
    public string? Kind { get; init; }

    /// <summary>What the ratios stand on: green (default), cooked, portion or area.</summary>
    public string? Base { get; init; }

    /// <summary>Finished formula per base: g/kg, % or ppm; g/100cm2 for an area base.</summary>
    public QuantityRequest? Dose { get; init; }

    /// <summary>The weight of meat that amounts were written for.</summary>
    public QuantityRequest? WrittenFor { get; init; }

    /// <summary>Whether that weight is green (default) or purchase weight.</summary>
    public string? WrittenForIs { get; init; }

    /// <summary>Up to 100 lines.</summary>
    public IReadOnlyList<FormulaLineRequest?>? Lines { get; init; }
}
