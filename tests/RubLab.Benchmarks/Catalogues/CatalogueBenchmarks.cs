using BenchmarkDotNet.Attributes;
using RubLab.Core.Catalogues;

namespace RubLab.Benchmarks.Catalogues;

/// <summary>Loading the reference data from text, as a host does once and the page at each visit.</summary>
[MemoryDiagnoser]
public class CatalogueBenchmarks
{
    private Dictionary<string, string> _files = [];

    [GlobalSetup]
    public void Setup() => _files = Kitchen.Files();

    [Benchmark]
    public Catalogue Load() => Catalogue.Read(_files);
}
