namespace RubLab.Contracts.Formulas;

/// <summary>A change of one line of a formula: exactly one of <c>formula</c> and <c>formulaId</c>, one of <c>amount</c> and <c>form</c>.</summary>
public sealed record FormulaChangeRequest
{
    /// <summary>The formula itself.</summary>
    public FormulaRequest? Formula { get; init; }

    /// <summary>Id of a stored formula.</summary>
    public string? FormulaId { get; init; }

    /// <summary>A revision of the stored formula; its latest if left out.</summary>
    public long? Revision { get; init; }

    /// <summary>Which line, from 0.</summary>
    public int? Line { get; init; }

    /// <summary>The line's new amount, in the unit it is written in.</summary>
    public double? Amount { get; init; }

    /// <summary>Another form for the line; its mass stays, and a volume changes with the density.</summary>
    public string? Form { get; init; }

    /// <summary>With a new amount: salt (default) keeps the salt per base and moves the dose; dose keeps the dose and moves the salt.</summary>
    public string? Hold { get; init; }
}
