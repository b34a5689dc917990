using BenchmarkDotNet.Attributes;
using RubLab.Core.Catalogues;
using RubLab.Core.Diffusion;
using RubLab.Core.Quantities;
using RubLab.Core.Timing;

namespace RubLab.Benchmarks.Timing;

/// <summary>How far salt gets: whole answers with their profiles, exact and as bands, and the bath by itself.</summary>
[MemoryDiagnoser]
[OperationsPerSecond]
public class SaltingBenchmarks
{
    private static readonly SaltingRequest Slab = new()
    {
        Method = SaltingMethod.DryBrine,
        Body = SaltedBody.Slab(Band.Exact(50), 2),
        Stages = [new(4, 24)],
        Diffusivity = AssumedDiffusivity.Given(Band.Exact(3e-10)),
    };

    private static readonly SaltingRequest Soaked = Slab with { Method = SaltingMethod.Soak, WaterRatio = 2 };

    private static readonly SaltedDimension Side = new(Band.Exact(120), 2);

    private static readonly SaltedBody Brick = SaltedBody.Brick(new(Band.Exact(50), 2), Side, Side);

    private static readonly SaltedBody UncertainBrick = SaltedBody.Brick(new(new Band(45, 60, 80), 2), Side, Side);

    private static readonly FiniteVolumeProblem Volumes = new() { Dimensions = 1, WaterRatio = 2 };

    private readonly double _time = 0.1;

    private SaltingReference _reference = null!;

    private AssumedDiffusivity _pork = null!;

    [GlobalSetup]
    public void Setup()
    {
        _reference = Catalogue.Read(Kitchen.Files()).Salting;
        _pork = _reference.TryFindDiffusivity("pork", out var pork) ? AssumedDiffusivity.Of(pork) : throw new InvalidOperationException("No pork.");
    }

    [Benchmark(Baseline = true)]
    public SaltingTimes Dry_brine_of_a_slab() => SaltingTimes.Compute(Slab, _reference);

    [Benchmark]
    public SaltingTimes Soak_of_a_slab() => SaltingTimes.Compute(Soaked, _reference);

    [Benchmark]
    public SaltingTimes Soak_of_a_cylinder() => SaltingTimes.Compute(Soaked with { Body = SaltedBody.Cylinder(Band.Exact(50)) }, _reference);

    [Benchmark]
    public SaltingTimes Soak_of_a_brick() => SaltingTimes.Compute(Soaked with { Body = Brick }, _reference);

    [Benchmark]
    public SaltingTimes Dry_brine_of_a_slab_of_pork_as_bands() => SaltingTimes.Compute(
        Slab with { Body = SaltedBody.Slab(new Band(45, 60, 80), 2), Diffusivity = _pork }, _reference);

    [Benchmark]
    public SaltingTimes Soak_of_a_cylinder_of_pork_as_bands() => SaltingTimes.Compute(
        Soaked with { Body = SaltedBody.Cylinder(new Band(45, 60, 80)), Diffusivity = _pork }, _reference);

    [Benchmark]
    public SaltingTimes Soak_of_a_brick_of_pork_as_bands() => SaltingTimes.Compute(
        Soaked with { Body = UncertainBrick, Diffusivity = _pork }, _reference);

    [Benchmark]
    public double Uptake_from_a_bath() => LimitedBath.Slab(2).UptakeAt(_time);

    [Benchmark]
    public double Uptake_of_a_cylinder_from_a_bath() => LimitedBath.Cylinder(2).UptakeAt(_time);

    [Benchmark]
    public double Time_for_an_uptake_from_a_bath() => LimitedBath.Slab(2).TimeFor(5 * _time);

    [Benchmark]
    public FiniteVolumes The_same_by_finite_volumes() => FiniteVolumes.Solve(Volumes, _time);
}
