namespace RubLab.Core.Scaling;

/// <summary>What a premix is to bring to one bowl, and in what it is weighed.</summary>
/// <param name="Grams">The small line's due in one bowl, above zero.</param>
/// <param name="CarrierGrams">The large line's due in one bowl, no less than the small one.</param>
/// <param name="Step">The step the small line is too small for.</param>
/// <param name="Scales">The kitchen's scales.</param>
/// <param name="CoarsePercent">A step above this share of an amount is coarse.</param>
public sealed record PremixRequest(double Grams, double CarrierGrams, WeighingStep Step, ScaleSet Scales, double CoarsePercent)
{
    /// <summary>The small line has a limit: no more than its due, no less by more than a coarse step, and nothing of it weighed coarsely.</summary>
    public bool IsLimited { get; init; }

    /// <summary>What the sheet weighs of both lines: in a mix that carries a limited additive a premix takes no less, or the mix would
    /// fall short and the share of the additive rise.</summary>
    public double LeastGrams { get; init; }

    /// <summary>The most of the carrier that goes into the premix.</summary>
    public double MostCarrierGrams { get; init; } = double.PositiveInfinity;
}
