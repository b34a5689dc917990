using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Meat;

/// <summary>The shape pieces of a cut are taken to have.</summary>
/// <param name="Kind">The body.</param>
/// <param name="LengthToThickness">Length over thickness at the typical size.</param>
/// <param name="WidthToThickness">Width over thickness at the typical size.</param>
/// <param name="ThicknessMillimetres">Thickness of such pieces; a slab has the typical one whatever it weighs.</param>
/// <param name="DensityKilogramsPerCubicMetre">Density of the raw meat.</param>
/// <param name="Citation">Where this comes from.</param>
public sealed record CutShape(
    ShapeKind Kind, double LengthToThickness, double WidthToThickness, Band ThicknessMillimetres,
    double DensityKilogramsPerCubicMetre, Citation Citation)
{
    /// <summary>Volume over length x width x thickness.</summary>
    public double Fullness => Kind switch
    {
        ShapeKind.Cylinder => Math.PI / 4,
        ShapeKind.Ellipsoid => Math.PI / 6,
        _ => 1,
    };
}
