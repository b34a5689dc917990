using RubLab.Core.Solving;

namespace RubLab.Core.Diffusion;

/// <summary>
/// Where the salt of one exact piece stands after so much travel. Strengths are relative to the even one at the end; travel is the
/// sum of D x t over the stages, mm2. Positions run along the line from the middle (or a closed face) at 0 to the nearest
/// treated face at 1, halfway up the other dimensions.
/// </summary>
internal abstract class SaltField
{
    /// <summary>From the nearest treated face to the middle or the closed face behind it, mm.</summary>
    public abstract double ReachMillimetres { get; }

    /// <summary>Salt in the piece over the salt in it at the end.</summary>
    public abstract double Uptake(double travel);

    /// <summary>Strength at a place of the line.</summary>
    public abstract double At(double position, double travel);

    /// <summary>Strength of the whole layer parallel to the face through that place.</summary>
    public virtual double Layer(double position, double travel) => At(position, travel);

    /// <summary>Strengths over the mean, on the line and in the layers, at places evenly apart.</summary>
    public virtual (double[] Line, double[] Layers) Profile(double travel, int places)
    {
        var mean = Uptake(travel);
        double[] line = new double[places], layers = new double[places];
        for (var i = 0; i < places; i++)
        {
            var position = (double)i / (places - 1);
            (line[i], layers[i]) = (At(position, travel) / mean, Layer(position, travel) / mean);
        }

        return (line, layers);
    }

    /// <summary>The same with another reach, where that is all its size.</summary>
    public virtual SaltField Reaching(double millimetres) => throw new NotSupportedException("A brick has more than one reach.");

    /// <summary>Salt in the piece over the salt in it at the end, and the middle over the mean.</summary>
    public virtual (double Uptake, double CentreToMean) Middle(double travel)
    {
        var uptake = Uptake(travel);
        return (uptake, At(0, travel) / uptake);
    }

    public double CentreToMean(double travel) => At(0, travel) / Uptake(travel);

    /// <summary>How deep the strength is at least a share of the even one, mm.</summary>
    public double Depth(double share, double travel)
    {
        if (At(0, travel) >= share)
        {
            return ReachMillimetres;
        }

        return At(1, travel) <= share ? 0 : ReachMillimetres * (1 - Bracket.Crossing(new Excess(this, share, travel), 0, 1));
    }

    /// <summary>The travel after which the middle holds a share of the mean.</summary>
    public double TravelToEven(double share) => TravelTo(new Evenness(this, share));

    /// <summary>The travel after which a share of the salt is taken up.</summary>
    public double TravelToUptake(double share) => TravelTo(new TakenUp(this, share));

    /// <summary>The field of one exact piece.</summary>
    /// <param name="waterRatio">Zero for a dry brine, infinity for a salt bed.</param>
    /// <param name="shape">The body.</param>
    /// <param name="reachesMillimetres">Of each treated dimension.</param>
    public static SaltField Of(double waterRatio, SaltedShape shape, IReadOnlyList<double> reachesMillimetres)
    {
        if (shape == SaltedShape.Cylinder)
        {
            return new CylinderField(waterRatio, reachesMillimetres[0]);
        }

        double[] reaches = [.. reachesMillimetres.Order()];
        return waterRatio switch
        {
            _ when reaches.Length == 1 => new SlabField(waterRatio, reaches[0]),
            0 => new BrickOfSheets(reaches),
            double.PositiveInfinity => new BrickInBed(reaches),
            _ => new BrickInBath(waterRatio, new BrickInBed(reaches)),
        };
    }

    private double TravelTo<T>(T reached)
        where T : struct, IFunction
    {
        double low = Math.Log(ReachMillimetres * ReachMillimetres), high = low;
        while (reached.At(low) >= 0)
        {
            low -= 2;
        }

        while (reached.At(high) < 0)
        {
            high += 1;
        }

        return Math.Exp(Bracket.Crossing(reached, low, high));
    }

    private readonly struct Excess(SaltField field, double share, double travel) : IFunction
    {
        public double At(double x) => field.At(x, travel) - share;
    }

    private readonly struct Evenness(SaltField field, double share) : IFunction
    {
        public double At(double x) => field.CentreToMean(Math.Exp(x)) - share;
    }

    private readonly struct TakenUp(SaltField field, double share) : IFunction
    {
        public double At(double x) => field.Uptake(Math.Exp(x)) - share;
    }
}
