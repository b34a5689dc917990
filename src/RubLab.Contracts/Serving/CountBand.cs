namespace RubLab.Contracts.Serving;

/// <summary>An uncertain count, in whole ones.</summary>
/// <param name="Low">The low end.</param>
/// <param name="Typical">The most likely count.</param>
/// <param name="High">The high end.</param>
public readonly record struct CountBand(long Low, long Typical, long High)
{
    public static CountBand From((long Low, long Typical, long High) counts) => new(counts.Low, counts.Typical, counts.High);
}
