namespace RubLab.Core.Diffusion;

/// <summary>A slab, or a brick with one dimension treated.</summary>
internal sealed class SlabField(SlabBath bath, double reach) : SaltField
{
    public SlabField(double waterRatio, double reach)
        : this(new SlabBath(waterRatio).Prepared(), reach)
    {
    }

    public override double ReachMillimetres => reach;

    public override double Uptake(double travel) => bath.Uptake(travel / (reach * reach));

    public override double At(double position, double travel) => bath.At(position, travel / (reach * reach));

    public override SaltField Reaching(double millimetres) => new SlabField(bath, millimetres);
}
