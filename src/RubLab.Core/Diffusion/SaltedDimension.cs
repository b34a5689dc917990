using RubLab.Core.Quantities;

namespace RubLab.Core.Diffusion;

/// <summary>One dimension of a piece and how many of the two faces across it are treated.</summary>
/// <param name="Millimetres">From face to face; for a cylinder its diameter. Above zero.</param>
/// <param name="FacesTreated">0, 1 or 2; a face that is not treated, a fat cap or skin say, lets no salt through.</param>
public sealed record SaltedDimension(Band Millimetres, int FacesTreated)
{
    /// <summary>How far salt has to go, mm: half where both faces are treated, the whole where one is.</summary>
    public Band ReachMillimetres => Millimetres.Over(FacesTreated);
}
