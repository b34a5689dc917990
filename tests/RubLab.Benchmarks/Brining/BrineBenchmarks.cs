using BenchmarkDotNet.Attributes;
using RubLab.Contracts.Brining;
using RubLab.Contracts.Quantities;
using RubLab.Core.Catalogues;
using RubLab.Core.Diffusion;

namespace RubLab.Benchmarks.Brining;

/// <summary>A liquid solved for two targets, a soak solved within a time, and one bath.</summary>
[MemoryDiagnoser]
public class BrineBenchmarks
{
    private readonly double _otherRatio = 2.75;
    private readonly Catalogue _catalogue = Catalogue.Read(Kitchen.Files());
    private readonly LimitedBath _bath = LimitedBath.Slab(1.5);

    private readonly BrineRequest _injection = new()
    {
        Kind = "injection",
        Cut = "pork-shoulder",
        Meat = QuantityRequest.Of(6, "kg"),
        Dose = QuantityRequest.Of(10, "%"),
        Lines = [new() { Ingredient = "water" }],
        Targets =
        [
            new() { Ingredient = "sodium-chloride", Reached = QuantityRequest.Of(8, "g/kg") },
            new() { Ingredient = "sugar-granulated", Reached = QuantityRequest.Of(3, "g/kg") },
        ],
    };

    private readonly BrineRequest _soak = new()
    {
        Kind = "soak",
        Cut = "chicken-leg",
        Meat = QuantityRequest.Of(2, "kg"),
        Liquid = QuantityRequest.Of(2, "kg"),
        Time = QuantityRequest.Of(6, "h"),
        Lines = [new() { Ingredient = "water" }],
        Targets = [new() { Ingredient = "sodium-chloride", Reached = QuantityRequest.Of(5, "g/kg") }],
    };

    [Benchmark]
    public object InjectionForTwoTargets() => Brines.Compute(_injection, _catalogue).Value!;

    [Benchmark]
    public object SoakForATarget() => Brines.Compute(_soak, _catalogue).Value!;

    /// <summary>A bath of another ratio with twenty of its roots.</summary>
    [Benchmark]
    public double TwentyRootsOfABath()
    {
        var bath = LimitedBath.Slab(_otherRatio);
        double sum = 0;
        for (var i = 1; i <= 20; i++)
        {
            sum += bath.Root(i);
        }

        return sum;
    }

    [Benchmark]
    public double UptakeOfABath() => _bath.UptakeAt(0.04);
}
