using RubLab.Core.Solving;

namespace RubLab.Core.Diffusion;

/// <summary>
/// Meat in a well-stirred liquid that loses the salt the meat takes up: how far along it is, and when it will be.
/// Salt is taken to be as strong in the meat's water as in the liquid once even (partition 1).
/// </summary>
/// <remarks>
/// Time is dimensionless, <c>T = D t / l^2</c>: <c>l</c> is half the thickness of a slab treated on both faces, the whole where one
/// face is treated, the radius of a cylinder. Nothing here allocates. <c>default</c> is not a bath and throws.
/// Crank, The Mathematics of Diffusion, 4.37 to 4.45 and 5.33 to 5.37.
/// </remarks>
public readonly struct LimitedBath
{
    private const double Tolerance = 1e-13;

    private readonly bool _isCylinder;

    private LimitedBath(double waterRatio, bool isCylinder)
    {
        if (!(waterRatio > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(waterRatio), waterRatio, "Above zero.");
        }

        WaterRatio = waterRatio;
        _isCylinder = isCylinder;
    }

    /// <summary>Water of the liquid over water of the meat.</summary>
    public double WaterRatio { get; }

    /// <summary>The part of all the salt that is in the meat once even, 0 to 1, of meat that began with none.</summary>
    public double TakenUpAtTheEnd => 1 / (1 + WaterRatio);

    /// <summary>A slab in a bath.</summary>
    /// <param name="waterRatio">Water of the liquid over water of the meat; above zero, infinity for a liquid that never weakens.</param>
    /// <exception cref="ArgumentOutOfRangeException">Zero, below, or not a number.</exception>
    public static LimitedBath Slab(double waterRatio) => new(waterRatio, isCylinder: false);

    /// <summary>A long cylinder in a bath.</summary>
    /// <param name="waterRatio">Water of the liquid over water of the meat; above zero, infinity for a liquid that never weakens.</param>
    /// <exception cref="ArgumentOutOfRangeException">Zero, below, or not a number.</exception>
    public static LimitedBath Cylinder(double waterRatio) => new(waterRatio, isCylinder: true);

    /// <summary>The salt taken up, as a fraction of what will be taken up once even, 0 to 1.</summary>
    /// <param name="time">Dimensionless time, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Below zero or not finite.</exception>
    public double UptakeAt(double time)
    {
        Guard();
        if (!(time >= 0 && double.IsFinite(time)))
        {
            throw new ArgumentOutOfRangeException(nameof(time), time, "Finite, zero or more.");
        }

        return time == 0 ? 0 : Math.Clamp(_isCylinder ? new CylinderBath(WaterRatio).Uptake(time) : new SlabBath(WaterRatio).Uptake(time), 0, 1);
    }

    /// <summary>The strength of the liquid, as a fraction of its strength at the start, 0 to 1.</summary>
    /// <param name="time">Dimensionless time, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Below zero or not finite.</exception>
    public double LiquidAt(double time) => 1 - (TakenUpAtTheEnd * UptakeAt(time));

    /// <summary>The dimensionless time at which a fraction of the uptake once even is reached.</summary>
    /// <param name="uptake">Zero or more, below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that.</exception>
    public double TimeFor(double uptake)
    {
        Guard();
        if (!(uptake >= 0 && uptake < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(uptake), uptake, "Zero or more, below 1.");
        }

        if (uptake == 0)
        {
            return 0;
        }

        // Sought as a logarithm: a small bath is taken up in very little time.
        double low = -1, high = 1;
        while (UptakeAt(Math.Exp(low)) >= uptake && low > -600)
        {
            low *= 2;
        }

        while (UptakeAt(Math.Exp(high)) < uptake && high < 100)
        {
            high *= 2;
        }

        return Math.Exp(Bracket.Crossing(new Lack(this, uptake), low, high, Tolerance));
    }

    /// <summary>Root <paramref name="n"/> of the bath's equation: <c>tan q = -ratio q</c>, or the cylinder's own.</summary>
    /// <param name="n">From 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Below 1.</exception>
    public double Root(int n)
    {
        Guard();
        ArgumentOutOfRangeException.ThrowIfLessThan(n, 1);
        return _isCylinder ? new CylinderBath(WaterRatio).Root(n) : new SlabBath(WaterRatio).Root(n);
    }

    private void Guard()
    {
        if (!(WaterRatio > 0))
        {
            throw new InvalidOperationException("A bath comes from Slab or Cylinder.");
        }
    }

    private readonly struct Lack(LimitedBath bath, double uptake) : IFunction
    {
        public double At(double x) => bath.UptakeAt(Math.Exp(x)) - uptake;
    }
}
