namespace RubLab.Storage.OwnNumbers;

/// <summary>What a kitchen's own number is of, by its ids in the reference data: one or two, which are not checked here.</summary>
public interface IOwnNumberKey<TKey>
    where TKey : IOwnNumberKey<TKey>
{
    /// <summary>The first id.</summary>
    string First { get; }

    /// <summary>The second; null where one is enough.</summary>
    string? Second { get; }

    /// <summary>One or two ids, in the order lists are sorted by.</summary>
    string[] Parts => Second is { } second ? [First, second] : [First];

    /// <summary>As the change feed and a path name it.</summary>
    string Id => string.Join('/', Parts);

    /// <summary>The key of these ids.</summary>
    static abstract TKey Of(string first, string? second);
}
