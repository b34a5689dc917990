using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Formulas;

/// <summary>A formula as a cook writes it. Stored exactly like this.</summary>
public sealed record FormulaRequest
{
    /// <summary>The formula's name, at most 200 characters.</summary>
    public string? Name { get; init; }

    /// <summary>dry-brine, rub, slather, injection, soak, mop or sauce.</summary>
    public string? Kind { get; init; }

    /// <summary>What the ratios stand on: green (default), cooked, portion or area.</summary>
    public string? Base { get; init; }

    /// <summary>Finished formula per base: g/kg, % or ppm; g/100cm2 for an area base. Of an injection and a soak: liquid per meat, 10 % pump is 100 g/kg.</summary>
    public QuantityRequest? Dose { get; init; }

    /// <summary>The weight of meat that amounts were written for.</summary>
    public QuantityRequest? WrittenFor { get; init; }

    /// <summary>Whether that weight is green (default) or purchase weight.</summary>
    public string? WrittenForIs { get; init; }

    /// <summary>Of a sauce or a mop that is boiled down: weight left, percent of what goes into the pot. The dose is of what is left.</summary>
    public QuantityRequest? ReducedTo { get; init; }

    /// <summary>Up to 100 lines.</summary>
    public IReadOnlyList<FormulaLineRequest?>? Lines { get; init; }
}
