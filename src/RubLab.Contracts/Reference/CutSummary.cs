namespace RubLab.Contracts.Reference;

/// <summary>A cut in a list.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Species">The kind of animal.</param>
/// <param name="Class">red-meat, poultry, fish or ground: what cautions and the method of a cure go by.</param>
public sealed record CutSummary(string Id, string Name, string Species, string Class);
