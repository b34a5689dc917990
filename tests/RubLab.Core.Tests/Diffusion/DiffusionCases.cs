using RubLab.Core.Diffusion;
using RubLab.Core.Quantities;
using RubLab.Core.Timing;

namespace RubLab.Core.Tests.Diffusion;

/// <summary>Questions with exact answers, and the numerical solver's ways of asking.</summary>
public static class DiffusionCases
{
    public const double Bed = double.PositiveInfinity;

    /// <summary>A slab of a reach of 100 mm after a dimensionless time, at a diffusivity that makes it so.</summary>
    public static SaltingRequest Slab(SaltingMethod method, double time, double? waterRatio = null) =>
        Of(SaltedBody.Slab(Band.Exact(100), 1), method, time * 100 * 100, waterRatio);

    /// <summary>A piece after a travel in mm2.</summary>
    public static SaltingRequest Of(SaltedBody body, SaltingMethod method, double travel, double? waterRatio = null)
    {
        const double diffusivity = 1e-9;
        return new SaltingRequest
        {
            Method = method,
            Body = body,
            Stages = [new(4, travel / (diffusivity * 1e6 * 3600))],
            Diffusivity = AssumedDiffusivity.Given(Band.Exact(diffusivity)),
            WaterRatio = waterRatio,
        };
    }

    public static SaltingTimes Answer(this SaltingRequest request) => SaltingTimes.Compute(request, Seed.Catalogue);

    /// <summary>The mean of a function from 0 to a place, by Simpson's rule.</summary>
    public static double Integral(Func<double, double> function, double to, int parts = 2000)
    {
        double sum = 0, step = to / parts;
        for (var i = 0; i <= parts; i++)
        {
            sum += function(i * step) * (i == 0 || i == parts ? 1 : i % 2 == 1 ? 4 : 2);
        }

        return sum * step / 3;
    }

    /// <summary>Finite volumes with all the salt in the outermost cell.</summary>
    public static FiniteVolumes PlaneSource(double time, int dimensions = 1) => FiniteVolumes.Solve(
        new FiniteVolumeProblem
        {
            Dimensions = dimensions,
            WaterRatio = 0,
            StrengthBetween = (from, to) => to >= 1 ? 1 / (1 - Math.Pow(from, dimensions)) : 0,
        },
        time);

    /// <summary>Finite volumes in a bath, of meat without salt.</summary>
    public static FiniteVolumes InBath(double waterRatio, double time, int dimensions = 1, double conductance = double.PositiveInfinity) =>
        FiniteVolumes.Solve(
            new FiniteVolumeProblem { Dimensions = dimensions, WaterRatio = waterRatio, FaceConductance = conductance }, time);
}
