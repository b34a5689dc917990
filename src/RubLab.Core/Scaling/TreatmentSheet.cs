namespace RubLab.Core.Scaling;

/// <summary>What to weigh for one treatment, in whole weighing steps.</summary>
public sealed class TreatmentSheet
{
    internal TreatmentSheet(Treatment treatment, PieceAmounts pieces, IReadOnlyList<LineAmount> lines, IReadOnlyList<double> dueGrams, int bowls)
    {
        Treatment = treatment;
        Pieces = pieces;
        Lines = lines;
        DueGrams = dueGrams;
        BowlCount = bowls;
    }

    public Treatment Treatment { get; }

    public PieceAmounts Pieces { get; }

    public IReadOnlyList<LineAmount> Lines { get; }

    /// <summary>What each line comes to before it is rounded to the scale, all bowls together.</summary>
    public IReadOnlyList<double> DueGrams { get; }

    /// <summary>The mix is made in so many equal bowls.</summary>
    public int BowlCount { get; }

    /// <summary>What goes on the meat and the overage, in the scales' unit: exactly the sum of the lines.</summary>
    public decimal ToMix => Lines.Sum(l => l.Value);
}
