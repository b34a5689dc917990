using BenchmarkDotNet.Attributes;
using RubLab.Contracts.Outputs;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Timing;
using RubLab.Core.Catalogues;

namespace RubLab.Benchmarks.Timing;

/// <summary>Answers on salting as they are posted, and their pictures.</summary>
[MemoryDiagnoser]
[OperationsPerSecond]
public class SaltingPlotBenchmarks
{
    private static readonly SaltingTimesRequest Pork = new()
    {
        Method = "dry-brine",
        Shape = "slab",
        Thickness = QuantityRequest.Of(50, "mm"),
        Species = "pork",
        Stages = [new() { Temperature = QuantityRequest.Of(4, "C"), Time = QuantityRequest.Of(24, "h") }],
    };

    private static readonly SaltingTimesRequest Shoulder = new()
    {
        Method = "soak",
        LiquidRatio = 1.5,
        Cut = "pork-shoulder",
        Weight = QuantityRequest.Of(3.4, "kg"),
        Stages = [new() { Temperature = QuantityRequest.Of(4, "C"), Time = QuantityRequest.Of(48, "h") }],
    };

    private Catalogue _catalogue = null!;
    private SaltingAnswer _pork = null!;
    private SaltingAnswer _soaked = null!;
    private SaltingAnswer _shoulder = null!;

    [GlobalSetup]
    public void Setup()
    {
        _catalogue = Catalogue.Read(Kitchen.Files());
        _pork = SaltingAnswers.Compute(Pork, _catalogue).Value!;
        _soaked = SaltingAnswers.Compute(Pork with { Method = "soak", LiquidRatio = 1.5 }, _catalogue).Value!;
        _shoulder = SaltingAnswers.Compute(Shoulder, _catalogue).Value!;
    }

    [Benchmark(Baseline = true)]
    public SaltingTimesResponse Exact_answer_with_its_profile() =>
        SaltingAnswers.Compute(Pork with { Diffusivity = QuantityRequest.Of(3e-10, "m2/s") }, _catalogue).Value!.Response;

    [Benchmark]
    public SaltingTimesResponse Answer_by_species() => SaltingAnswers.Compute(Pork, _catalogue).Value!.Response;

    [Benchmark]
    public SaltingTimesResponse Answer_for_a_soaked_shoulder() => SaltingAnswers.Compute(Shoulder, _catalogue).Value!.Response;

    [Benchmark]
    public string Picture_of_a_profile() => SaltingPlots.Of(_pork, SaltingPlot.Profile);

    [Benchmark]
    public string Picture_of_an_uptake() => SaltingPlots.Of(_soaked, SaltingPlot.Uptake);

    [Benchmark]
    public string Picture_of_the_uptake_of_a_soaked_shoulder() => SaltingPlots.Of(_shoulder, SaltingPlot.Uptake);
}
