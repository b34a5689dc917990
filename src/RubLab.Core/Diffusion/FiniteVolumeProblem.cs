namespace RubLab.Core.Diffusion;

/// <summary>Diffusion between the middle (or a closed face) at 0 and a face at 1, as the finite volumes take it.</summary>
public sealed record FiniteVolumeProblem
{
    /// <summary>1 for a slab, 2 for a long cylinder, 3 for a sphere.</summary>
    public required int Dimensions { get; init; }

    /// <summary>Volume of the stirred liquid over that of the meat: zero for a closed face, infinity for a liquid that never weakens.</summary>
    public required double WaterRatio { get; init; }

    /// <summary>How readily salt passes the face, as <c>l k / D</c>; infinity, the default, for a face in step with the liquid.</summary>
    public double FaceConductance { get; init; } = double.PositiveInfinity;

    /// <summary>Strength of the liquid at time 0.</summary>
    public double Liquid { get; init; } = 1;

    /// <summary>Strength in the meat at time 0 between two places, as a mean; none for meat without salt.</summary>
    public Func<double, double, double>? StrengthBetween { get; init; }

    /// <summary>Cells, finer towards the face. From 3.</summary>
    public int Cells { get; init; } = 400;

    /// <summary>Steps of time, finer towards the start. From 1.</summary>
    public int Steps { get; init; } = 400;
}
