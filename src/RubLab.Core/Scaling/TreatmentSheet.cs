namespace RubLab.Core.Scaling;

/// <summary>What to weigh for one treatment, in whole weighing steps.</summary>
public sealed class TreatmentSheet
{
    internal TreatmentSheet(Treatment treatment, int[] pieceIndexes, long[] pieceSteps, long onMeatSteps, long[] lineSteps, long toMixSteps, double lostSteps)
    {
        Treatment = treatment;
        PieceIndexes = pieceIndexes;
        PieceSteps = pieceSteps;
        OnMeatSteps = onMeatSteps;
        LineSteps = lineSteps;
        ToMixSteps = toMixSteps;
        LostSteps = lostSteps;
    }

    public Treatment Treatment { get; }

    /// <summary>Indexes of the pieces in the pile, from 0.</summary>
    public IReadOnlyList<int> PieceIndexes { get; }

    /// <summary>What goes on each piece, all applications together; sums to <see cref="OnMeatSteps"/>.</summary>
    public IReadOnlyList<long> PieceSteps { get; }

    public long OnMeatSteps { get; }

    /// <summary>What to weigh of each formula line; sums to <see cref="ToMixSteps"/>.</summary>
    public IReadOnlyList<long> LineSteps { get; }

    /// <summary>What goes on the meat and the overage.</summary>
    public long ToMixSteps { get; }

    /// <summary>The least amount of a piece or a line that is above zero and comes to no whole step; zero where there is none.</summary>
    internal double LostSteps { get; }
}
