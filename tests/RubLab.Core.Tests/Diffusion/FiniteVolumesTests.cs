using CsCheck;
using RubLab.Core.Diffusion;

namespace RubLab.Core.Tests.Diffusion;

public sealed class FiniteVolumesTests
{
    [Fact]
    public void No_salt_is_lost_between_meat_and_liquid() => Law.Holds(
        Gen.Select(Gen.Int[1, 3], Gen.Double[-4, 4].Select(Math.Exp), Gen.Double[0, 2], Gen.Double[0, 1], Gen.Double[0.1, 50]), 200, x =>
        {
            var (dimensions, ratio, time, inMeat, conductance) = x;
            var state = FiniteVolumes.Solve(
                new FiniteVolumeProblem
                {
                    Dimensions = dimensions,
                    WaterRatio = ratio,
                    FaceConductance = conductance,
                    StrengthBetween = (_, _) => inMeat,
                    Cells = 60,
                    Steps = 40,
                },
                time);

            Assert.Equal(inMeat + ratio, state.Mean + (ratio * state.Liquid), 1e-11 * (1 + ratio));
        });

    [Fact]
    public void Twice_as_fine_is_four_times_as_right()
    {
        var exact = new SlabBath(2).Uptake(0.1) * 2 / 3;

        Assert.InRange(Error(40) / Error(80), 3, 6);

        double Error(int fineness) => Math.Abs(exact - FiniteVolumes.Solve(
            new FiniteVolumeProblem { Dimensions = 1, WaterRatio = 2, Cells = fineness, Steps = fineness }, 0.1).Mean);
    }

    [Fact]
    public void Meat_as_strong_as_its_liquid_stays_so()
    {
        var state = FiniteVolumes.Solve(new FiniteVolumeProblem { Dimensions = 2, WaterRatio = 3, StrengthBetween = (_, _) => 1 }, 1);

        Assert.All([0, 0.3, 1], position => Assert.Equal(1, state.At(position), 1e-12));
    }

    [Fact]
    public void Wrong_arguments_throw()
    {
        var sound = new FiniteVolumeProblem { Dimensions = 1, WaterRatio = 1 };
        FiniteVolumeProblem[] unsound =
        [
            sound with { Dimensions = 0 }, sound with { Dimensions = 4 }, sound with { WaterRatio = -1 }, sound with { WaterRatio = double.NaN },
            sound with { FaceConductance = 0 }, sound with { Liquid = double.PositiveInfinity }, sound with { Cells = 2 }, sound with { Steps = 0 },
        ];
        Assert.All(unsound, problem => Assert.Throws<ArgumentOutOfRangeException>(() => FiniteVolumes.Solve(problem, 1)));
        Assert.All([-1, double.NaN, double.PositiveInfinity], time => Assert.Throws<ArgumentOutOfRangeException>(() => FiniteVolumes.Solve(sound, time)));
    }
}
