namespace RubLab.Contracts.Formulas;

/// <summary>A stored formula in a list.</summary>
/// <param name="Id">Its id in the path.</param>
/// <param name="Revision">The latest revision.</param>
/// <param name="Name">The name; lists are in its order.</param>
/// <param name="Kind">The kind of mix.</param>
/// <param name="UpdatedAt">When the latest revision was stored, UTC.</param>
public sealed record FormulaSummary(string Id, long Revision, string Name, string Kind, string UpdatedAt);
