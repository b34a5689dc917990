namespace RubLab.Core.Diffusion;

/// <summary>A dry brined brick: as many grams per area on every treated face, and none to follow.</summary>
/// <remarks>
/// The salt of one face spreads as if the others were not there, for it enters all over that face and no face lets it out. So the
/// faces' own solutions add up; they do not multiply. A dimension counts with the face area it brings, one over its reach.
/// </remarks>
internal sealed class BrickOfSheets : SaltField
{
    private readonly SlabBath _sheet = new SlabBath(0).Prepared();
    private readonly double[] _reaches;
    private readonly double[] _shares;

    /// <param name="reaches">Of each treated dimension, mm, the nearest first.</param>
    public BrickOfSheets(double[] reaches)
    {
        _reaches = reaches;
        var area = reaches.Sum(reach => 1 / reach);
        _shares = [.. reaches.Select(reach => 1 / reach / area)];
    }

    public override double ReachMillimetres => _reaches[0];

    public override double Uptake(double travel) => 1;

    public override double At(double position, double travel)
    {
        var sum = Sheet(0, position, travel);
        for (var i = 1; i < _reaches.Length; i++)
        {
            sum += Sheet(i, 0, travel);
        }

        return sum;
    }

    public override double Layer(double position, double travel) => Sheet(0, position, travel) + 1 - _shares[0];

    private double Sheet(int i, double position, double travel) => _shares[i] * _sheet.At(position, travel / (_reaches[i] * _reaches[i]));
}
