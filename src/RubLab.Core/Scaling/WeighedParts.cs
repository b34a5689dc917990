namespace RubLab.Core.Scaling;

/// <summary>How much of its due whole weighing steps bring of a formula line, 0 to 1; 1 where they bring no less.</summary>
public static class WeighedParts
{
    /// <summary>Of what is put on all the meat at once: what is weighed of the line.</summary>
    public static double InMix(TreatmentSheet sheet, int formulaLine) =>
        Part(sheet.Lines[formulaLine].Grams, sheet.DueGrams[formulaLine]);

    /// <summary>Of what is put on the pieces of a pile line: the line's part of the mix, on the piece that gets least of its own due.</summary>
    public static double OnPieces(TreatmentSheet sheet, Pile pile, int pileLine, int formulaLine)
    {
        var weighed = sheet.Lines.Sum(l => l.Grams);
        var due = sheet.DueGrams.Sum();
        return weighed > 0
            ? Part(sheet.Lines[formulaLine].Grams / weighed * LeastOnPiece(sheet, pile, pileLine), sheet.DueGrams[formulaLine] / due)
            : 0;
    }

    private static double LeastOnPiece(TreatmentSheet sheet, Pile pile, int pileLine)
    {
        var treatment = sheet.Treatment;
        var at = treatment.OnLines.TakeWhile(line => line != pileLine).Sum(line => pile.GreenGramsOf(line).Length);
        var least = double.PositiveInfinity;
        foreach (var due in BatchSheet.DueOnPieces(pile, treatment, pileLine))
        {
            least = due > 0 ? Math.Min(least, sheet.Pieces.Step.GramsOf(sheet.Pieces.Steps[at]) / due) : least;
            at++;
        }

        return double.IsFinite(least) ? least : 1;
    }

    private static double Part(double weighed, double due) => due > 0 ? Math.Min(1, weighed / due) : 1;
}
