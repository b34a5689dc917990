using System.Text.Json;
using BenchmarkDotNet.Attributes;
using RubLab.Contracts.Json;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;

namespace RubLab.Benchmarks.Scaling;

/// <summary>The sheet of 40 pieces under three treatments, from posted bytes to the bytes of the answer, step by step.</summary>
[MemoryDiagnoser]
public class SheetBenchmarks
{
    private Catalogue _catalogue = null!;
    private byte[] _posted = [];
    private BatchSheetRequest _request = null!;
    private BatchSheetResponse _answer = null!;

    [GlobalSetup]
    public void Setup()
    {
        _catalogue = Catalogue.Read(Kitchen.Files());
        _posted = JsonSerializer.SerializeToUtf8Bytes(Kitchen.Sheet(40), RubLabJson.Default.BatchSheetRequest);
        _request = Read();
        _answer = Compute();
    }

    [Benchmark]
    public BatchSheetRequest Read() => JsonSerializer.Deserialize(_posted, RubLabJson.Default.BatchSheetRequest)!;

    [Benchmark]
    public BatchSheetResponse Compute() => BatchSheets.Compute(_request, _catalogue, (_, _) => null).Value!;

    [Benchmark]
    public byte[] Write() => JsonSerializer.SerializeToUtf8Bytes(_answer, RubLabJson.Default.BatchSheetResponse);

    [Benchmark(Baseline = true)]
    public byte[] Read_compute_and_write()
    {
        var request = JsonSerializer.Deserialize(_posted, RubLabJson.Default.BatchSheetRequest)!;
        var answer = BatchSheets.Compute(request, _catalogue, (_, _) => null).Value!;
        return JsonSerializer.SerializeToUtf8Bytes(answer, RubLabJson.Default.BatchSheetResponse);
    }
}
