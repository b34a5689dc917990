using RubLab.Core.Quantities;

namespace RubLab.Core.Formulas;

/// <summary>A formula as far as it could be read, before the rules between its members are checked.</summary>
public sealed record FormulaDraft
{
    public required string? Name { get; init; }

    public required FormulaKind? Kind { get; init; }

    public required RatioBase Base { get; init; }

    public required double? Dose { get; init; }

    public required Unit? DoseUnit { get; init; }

    /// <summary>A dose was given and has its own fault already: it is not missing as well.</summary>
    public bool IsDoseUnreadable { get; init; }

    public required double? WrittenForGrams { get; init; }

    /// <summary>The weight was given and has its own fault already.</summary>
    public bool IsWrittenForUnreadable { get; init; }

    public required WeightBasis WrittenForIs { get; init; }

    /// <summary>Weight left when it is boiled down, percent of what goes into the pot; none where nothing is boiled off.</summary>
    public double? PercentLeft { get; init; }

    public required IReadOnlyList<FormulaLineDraft> Lines { get; init; }
}
