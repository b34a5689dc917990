using BenchmarkDotNet.Attributes;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Quantities;
using RubLab.Core.Catalogues;

namespace RubLab.Benchmarks.Ingredients;

/// <summary>Turning spoons into grams, with the form named and with the form left open.</summary>
[MemoryDiagnoser]
[OperationsPerSecond]
public class ConversionBenchmarks
{
    private static readonly ConversionItemRequest Pepper = new()
    {
        Ingredient = "black-pepper", Form = "ground", Amount = QuantityRequest.Of(2, "tbsp"), To = "g",
    };

    private static readonly ConversionItemRequest SomeSalt = new()
    {
        Ingredient = "salt", Amount = QuantityRequest.Of(0.25, "cup"), To = "g",
    };

    private Catalogue _catalogue = null!;

    [GlobalSetup]
    public void Setup() => _catalogue = Catalogue.Read(Kitchen.Files());

    [Benchmark(Baseline = true)]
    public ConversionResponse Convert_a_named_form() => Conversions.Compute(Pepper, _catalogue).Value!;

    [Benchmark]
    public ConversionResponse Convert_an_unnamed_form() => Conversions.Compute(SomeSalt, _catalogue).Value!;
}
