namespace RubLab.Core.Scaling;

/// <summary>All that is to be seasoned; pieces are numbered through it from 1.</summary>
public sealed class Pile
{
    private readonly double[] _greenGrams;
    private readonly double[] _doseFactors;
    private readonly int[] _first;

    public Pile(IReadOnlyList<PileLine> lines)
    {
        Lines = lines;
        _first = new int[lines.Count + 1];
        for (var i = 0; i < lines.Count; i++)
        {
            _first[i + 1] = _first[i] + lines[i].WeighedGrams.Count;
        }

        PieceCount = _first[lines.Count];
        _greenGrams = new double[PieceCount];
        _doseFactors = new double[PieceCount];
        for (var i = 0; i < lines.Count; i++)
        {
            var line = lines[i];
            for (var piece = 0; piece < line.WeighedGrams.Count; piece++)
            {
                var green = line.WeighedGrams[piece] * line.GreenPerWeighed;
                _greenGrams[_first[i] + piece] = green;
                _doseFactors[_first[i] + piece] = line.DoseFactors?[piece] ?? 1;
                GreenGrams += green;
            }
        }
    }

    public IReadOnlyList<PileLine> Lines { get; }

    public int PieceCount { get; }

    public double GreenGrams { get; }

    /// <summary>False while a line's trim is not known: such a sheet plans, it does not weigh out.</summary>
    public bool IsWeighed => Lines.All(l => !l.IsPlanned);

    /// <summary>Index, from 0, of the first piece of a line.</summary>
    public int FirstPieceOf(int line) => _first[line];

    /// <summary>Green weights of a line's pieces, grams.</summary>
    public ReadOnlySpan<double> GreenGramsOf(int line) => _greenGrams.AsSpan(_first[line].._first[line + 1]);

    /// <summary>Green weight of a whole line, grams.</summary>
    public double GreenGramsIn(int line)
    {
        double sum = 0;
        foreach (var piece in GreenGramsOf(line))
        {
            sum += piece;
        }

        return sum;
    }

    /// <summary>Dose factors of a line's pieces.</summary>
    public ReadOnlySpan<double> DoseFactorsOf(int line) => _doseFactors.AsSpan(_first[line].._first[line + 1]);

    /// <summary>The mean dose factor of a line, weighted by green weight; 1 for a line without weights.</summary>
    public double MeanDoseFactorOf(int line)
    {
        if (Lines[line].DoseFactors is null)
        {
            return 1;
        }

        double green = 0, dosed = 0;
        var greens = GreenGramsOf(line);
        var factors = DoseFactorsOf(line);
        for (var i = 0; i < greens.Length; i++)
        {
            green += greens[i];
            dosed += greens[i] * factors[i];
        }

        return green > 0 ? dosed / green : 1;
    }
}
