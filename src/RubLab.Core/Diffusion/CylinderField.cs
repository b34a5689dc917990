namespace RubLab.Core.Diffusion;

/// <summary>A long cylinder, salted all round.</summary>
internal sealed class CylinderField(CylinderBath bath, double radius) : SaltField
{
    public CylinderField(double waterRatio, double radius)
        : this(new CylinderBath(waterRatio).Prepared(), radius)
    {
    }

    public override double ReachMillimetres => radius;

    public override double Uptake(double travel) => bath.Uptake(travel / (radius * radius));

    public override double At(double position, double travel) => bath.At(position, travel / (radius * radius));

    public override SaltField Reaching(double millimetres) => new CylinderField(bath, millimetres);
}
