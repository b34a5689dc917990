namespace RubLab.Core.Scaling;

/// <summary>What goes on each piece, all applications together, in whole steps of one scale.</summary>
public sealed class PieceAmounts
{
    internal PieceAmounts(WeighingStep step, long[] steps, long total, double lost)
    {
        Step = step;
        Steps = steps;
        TotalSteps = total;
        LostSteps = lost;
    }

    public WeighingStep Step { get; }

    /// <summary>In the order of the treatment's lines and their pieces; sums to <see cref="TotalSteps"/>.</summary>
    public IReadOnlyList<long> Steps { get; }

    public long TotalSteps { get; }

    /// <summary>The least amount above zero that comes to no whole step, in steps; zero where there is none.</summary>
    public double LostSteps { get; }
}
