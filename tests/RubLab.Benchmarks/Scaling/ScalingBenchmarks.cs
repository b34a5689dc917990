using BenchmarkDotNet.Attributes;
using RubLab.Contracts.Formulas;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;

namespace RubLab.Benchmarks.Scaling;

/// <summary>Scaling three treatments to a pile, in Core alone. Time and bytes per piece should not depend on the pile.</summary>
[MemoryDiagnoser]
[PerPiece(nameof(Pieces))]
public class ScalingBenchmarks
{
    private const int Treatments = 3;

    private SheetRequest _request = null!;

    [Params(10, 1_000, 100_000)]
    public int Pieces { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        var catalogue = Catalogue.Read(Kitchen.Files());
        var findings = new FindingLog(catalogue);
        var formulas = Kitchen.Formulas().Take(Treatments).Select(f => FormulaReader.Read(f, catalogue, new FaultLog().Root)!);
        catalogue.TryFindCut("pork-shoulder", out var cut);
        _request = new SheetRequest
        {
            Pile = new Pile(
            [
                new PileLine
                {
                    Id = "shoulders",
                    Cut = cut!,
                    WeightIs = WeightBasis.Purchase,
                    TrimLossPercent = 8,
                    WeighedGrams = Enumerable.Range(0, Pieces).Select(i => 3200.0 + (i * 37 % 900)).ToArray(),
                },
            ]),
            Treatments = formulas.Select(f => new Treatment
            {
                Ratios = FormulaRatios.Of(f, catalogue, findings, ""),
                OnLines = [0],
                RetainedPercent = new Band(90, 95, 100),
            }).ToList(),
            Scales = ScaleSet.Of(WeighingStep.Default),
            OveragePercent = 5,
        };
    }

    [Benchmark]
    public BatchSheet Scale_three_treatments() => BatchSheet.Compute(_request);
}
