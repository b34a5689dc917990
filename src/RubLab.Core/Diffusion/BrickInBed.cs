namespace RubLab.Core.Diffusion;

/// <summary>A brick in a salt bed: what each dimension leaves unsalted multiplies (Newman's rule; exact for faces of one strength).</summary>
internal sealed class BrickInBed(double[] reaches) : SaltField
{
    public override double ReachMillimetres => reaches[0];

    /// <summary>The meat's volume over its treated surface, mm.</summary>
    public double ReachOfAllMillimetres { get; } = 1 / reaches.Sum(reach => 1 / reach);

    public override double Uptake(double travel)
    {
        double left = 1;
        foreach (var reach in reaches)
        {
            left *= 1 - SlabInBed.Uptake(travel / (reach * reach));
        }

        return 1 - left;
    }

    public override double At(double position, double travel) => 1 - (LeftOnLine(position, travel) * Beside(travel).OnLine);

    public override double Layer(double position, double travel) => 1 - (LeftOnLine(position, travel) * Beside(travel).InLayer);

    /// <summary>Strengths on the line and in the layers at places evenly apart, each added with a weight to what is there.</summary>
    public void AddTo(double[] line, double[] layers, double weight, double travel)
    {
        var (besideLine, besideLayer) = Beside(travel);
        for (var i = 0; i < line.Length; i++)
        {
            var left = LeftOnLine((double)i / (line.Length - 1), travel);
            line[i] += weight * (1 - (left * besideLine));
            layers[i] += weight * (1 - (left * besideLayer));
        }
    }

    private double LeftOnLine(double position, double travel) => 1 - SlabInBed.At(position, travel / (reaches[0] * reaches[0]));

    // What the other dimensions leave, at their middles and on average.
    private (double OnLine, double InLayer) Beside(double travel)
    {
        double onLine = 1, inLayer = 1;
        for (var i = 1; i < reaches.Length; i++)
        {
            var time = travel / (reaches[i] * reaches[i]);
            onLine *= 1 - SlabInBed.At(0, time);
            inLayer *= 1 - SlabInBed.Uptake(time);
        }

        return (onLine, inLayer);
    }
}
