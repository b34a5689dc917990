namespace RubLab.Client;

/// <summary>An answer and the entity tag that names this version of it.</summary>
/// <param name="Value">The answer.</param>
/// <param name="ETag">To be sent back as it came, quotes included.</param>
public sealed record Tagged<T>(T Value, string ETag);
