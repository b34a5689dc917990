namespace RubLab.Contracts.Outputs;

/// <summary>The tables of a batch sheet.</summary>
public enum SheetTable
{
    /// <summary>One row for each piece and treatment.</summary>
    Pieces,
    /// <summary>One row for each formula line and treatment.</summary>
    Lines,
}
