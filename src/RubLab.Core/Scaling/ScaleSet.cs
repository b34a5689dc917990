namespace RubLab.Core.Scaling;

/// <summary>The scales of a kitchen: each amount goes on the finest one that can take it.</summary>
public sealed class ScaleSet
{
    private readonly Scale[] _finestFirst;

    /// <param name="scales">At least one; all in one unit.</param>
    public ScaleSet(IEnumerable<Scale> scales)
    {
        _finestFirst = [.. scales.OrderBy(s => s.Step.Grams).ThenByDescending(s => s.CapacityGrams)];
        if (_finestFirst.Length == 0)
        {
            throw new ArgumentException("A kitchen has at least one scale.", nameof(scales));
        }
    }

    /// <summary>One scale without a limit.</summary>
    public static ScaleSet Of(WeighingStep step) => new([new Scale(double.PositiveInfinity, step)]);

    /// <summary>True for one scale, whose step holds for everything on the sheet.</summary>
    public bool IsSingle => _finestFirst.Length == 1;

    public Scale Finest => _finestFirst[0];

    public Scale Largest => _finestFirst.MaxBy(s => s.CapacityGrams)!;

    /// <summary>The finest scale that takes an amount at once; the largest one, in several weighings, if none does.</summary>
    public Scale For(double grams) => Array.Find(_finestFirst, s => s.Takes(grams)) ?? Largest;

    /// <summary>How often the chosen scale is loaded for an amount.</summary>
    public int WeighingsFor(double grams) => For(grams).LoadsFor(grams);
}
