using System.Text.Json;
using BenchmarkDotNet.Attributes;
using RubLab.Contracts.Json;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Serving;
using RubLab.Contracts.Shopping;
using RubLab.Core.Catalogues;

namespace RubLab.Benchmarks.Serving;

/// <summary>Ten thousand guests and thirty cuts, from posted bytes to the bytes of the answer.</summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private const int Cuts = 30;

    private Catalogue _catalogue = null!;
    private byte[] _plain = [];
    private byte[] _withSheet = [];

    [GlobalSetup]
    public void Setup()
    {
        _catalogue = Catalogue.Read(Kitchen.Files());
        _plain = JsonSerializer.SerializeToUtf8Bytes(Plan(null), RubLabJson.Default.PurchasePlanRequest);
        _withSheet = JsonSerializer.SerializeToUtf8Bytes(Plan([new MenuFormulaRequest { FormulaId = "rub" }]), RubLabJson.Default.PurchasePlanRequest);
    }

    [Benchmark(Baseline = true)]
    public byte[] Plan_a_purchase() => Answer(_plain);

    [Benchmark]
    public byte[] Plan_a_purchase_and_its_batch_sheet() => Answer(_withSheet);

    private byte[] Answer(byte[] posted)
    {
        var request = JsonSerializer.Deserialize(posted, RubLabJson.Default.PurchasePlanRequest)!;
        var answer = PurchasePlans.Compute(request, _catalogue, (_, _) => Kitchen.Formulas()[1]).Value!;
        return JsonSerializer.SerializeToUtf8Bytes(answer, RubLabJson.Default.PurchasePlanResponse);
    }

    private PurchasePlanRequest Plan(IReadOnlyList<MenuFormulaRequest?>? formulas) => new()
    {
        Guests = [new GuestGroupRequest { Count = 7000 }, new GuestGroupRequest { Count = 2000, Appetite = "small" }, new GuestGroupRequest { Count = 1000, Appetite = "hearty" }],
        Menu = _catalogue.Cuts.Where(c => c.CookYields.Count > 0).Take(Cuts).Select(MenuLineRequest? (cut) => new MenuLineRequest
        {
            Cut = cut.Id,
            Share = QuantityRequest.Of(Math.Round(100.0 / Cuts, 3), "%"),
            PieceWeight = QuantityRequest.Of(2, "kg"),
            Price = new PriceRequest { Amount = 9.5m, Currency = "EUR", Per = QuantityRequest.Of(1, "kg") },
            Formulas = formulas,
        }).ToList(),
        Reserve = QuantityRequest.Of(5, "%"),
    };
}
