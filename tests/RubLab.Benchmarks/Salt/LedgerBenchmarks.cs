using BenchmarkDotNet.Attributes;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;
using RubLab.Core.Catalogues;
using RubLab.Core.Curing;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Benchmarks.Salt;

/// <summary>The ledger of one pile line and its limited additives. Both should grow with lines and treatments and no faster.</summary>
[MemoryDiagnoser]
public class LedgerBenchmarks
{
    private static readonly string[] Ingredients =
        ["salt", "cure-6-25", "black-pepper", "paprika", "garlic-powder", "sugar-brown", "onion-powder", "mustard-seed-ground"];

    private Pile _pile = null!;
    private List<Treatment> _stack = null!;
    private Catalogue _catalogue = null!;

    [Params(1, 6, 12)]
    public int Treatments { get; set; }

    [Params(2, 8)]
    public int Lines { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        _catalogue = Catalogue.Read(Kitchen.Files());
        _catalogue.TryFindCut("pork-shoulder", out var cut);
        _pile = new Pile([new PileLine { Id = "shoulders", Cut = cut!, WeightIs = WeightBasis.Green, WeighedGrams = [3200, 3600, 4100], PortionGrams = 170 }]);
        var formula = FormulaReader.Read(
            new FormulaRequest
            {
                Name = "Mix",
                Kind = "rub",
                Dose = QuantityRequest.Of(5, "g/kg"),
                Lines = Ingredients.Take(Lines).Select(FormulaLineRequest? (id) => new FormulaLineRequest { Ingredient = id, Amount = QuantityRequest.Of(1, "parts-by-mass") }).ToList(),
            },
            _catalogue, new FaultLog().Root)!;
        var ratios = FormulaRatios.Of(formula, _catalogue, new FindingLog(_catalogue), "");
        _stack = Enumerable.Range(0, Treatments).Select(_ => new Treatment { Ratios = ratios, OnLines = [0], RetainedPercent = new Band(90, 95, 100) }).ToList();
    }

    [Benchmark]
    public SaltLedger Ledger() => SaltLedger.Of(_pile, 0, _stack, isWeighed: true);

    [Benchmark]
    public object Limits() => LimitChecks.Of(AdditiveLoads.Of(_pile, 0, _stack, isWeighed: true), _pile.Lines[0], _catalogue);
}
