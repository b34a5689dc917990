namespace RubLab.Storage.OwnNumbers;

/// <summary>One cut, which a cooking yield is of.</summary>
public sealed record CutKey(string CutId) : IOwnNumberKey<CutKey>
{
    string IOwnNumberKey<CutKey>.First => CutId;

    string? IOwnNumberKey<CutKey>.Second => null;

    public static CutKey Of(string first, string? second) => new(first);
}
