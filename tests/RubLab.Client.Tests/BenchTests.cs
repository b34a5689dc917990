using System.Net;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;

namespace RubLab.Client.Tests;

public sealed class BenchTests(Kitchen kitchen) : IClassFixture<Kitchen>
{
    private readonly RubLabClient _client = kitchen.Client;

    [Fact]
    public async Task Two_tablespoons_of_ground_pepper_become_grams()
    {
        var answer = await _client.Conversions.ConvertAsync("black-pepper", "ground", 2, "tbsp", "g");
        Assert.Equal(new QuantityBand(12.4, 13.8, 15.2, "g"), answer.Result);
    }

    [Fact]
    public async Task An_unnamed_form_is_asked_for()
    {
        var answer = await _client.Conversions.ConvertAsync("salt", null, 1, "tbsp", "g");
        Assert.Equal("form-unnamed", Assert.Single(answer.Findings).Code);
    }

    [Fact]
    public async Task A_conversion_is_refused_with_every_fault()
    {
        var refused = await Refused.WithAsync(
            HttpStatusCode.UnprocessableEntity, () => _client.Conversions.ConvertAsync("pepper & salt", null, double.NaN, "#", "C"));
        Assert.Equal(["/ingredient", "/unit", "/value", "/to"], refused.Errors.Select(e => e.Pointer));
    }

    [Fact]
    public async Task A_card_is_converted_item_by_item()
    {
        var answers = await _client.Conversions.ConvertAsync(
        [
            new() { Ingredient = "salt", Form = "table", Amount = QuantityRequest.Of(1, "lb"), To = "g" },
            new() { Ingredient = "salt", Form = "rock-candy", Amount = QuantityRequest.Of(1, "cup"), To = "g" },
        ]);
        Assert.Equal(453.59237, answers[0].Conversion!.Result.Typical);
        Assert.Null(answers[0].Errors);
        Assert.Equal("/items/1/form", Assert.Single(answers[1].Errors!).Pointer);
    }

    [Fact]
    public async Task A_card_without_items_is_refused() =>
        await Refused.WithAsync(HttpStatusCode.UnprocessableEntity, () => _client.Conversions.ConvertAsync([]));

    [Fact]
    public async Task A_sheet_scales_the_rub_to_the_shoulders()
    {
        var sheet = await _client.BatchSheets.ComputeAsync(Requests.Shoulders());
        var rub = Assert.Single(sheet.Treatments);
        Assert.Equal("weighed", sheet.Status);
        Assert.Equal(new Quantity(291, "g"), rub.OnMeat);
        Assert.Equal([122, 184], rub.Lines.Select(l => l.ToMix.Value));
        Assert.Equal(291, rub.Pieces!.Sum(p => p.Amount.Value));
        Assert.Equal(8.24, sheet.Salt[0].Ledger.SaltPerKgGreen.Typical);
    }

    [Fact]
    public async Task A_sheet_is_refused_with_the_pointers_of_its_faults()
    {
        var request = Requests.Shoulders() with { Treatments = [new() { FormulaId = "lost-rub", Stage = "overnight" }] };
        var refused = await Refused.WithAsync(HttpStatusCode.UnprocessableEntity, () => _client.BatchSheets.ComputeAsync(request));
        Assert.Equal(
            [("/treatments/0/formulaId", "unknown-formula"), ("/treatments/0/stage", "unknown-word")],
            refused.Errors.Select(e => (e.Pointer, e.Code)));
    }

    [Fact]
    public async Task A_salt_check_needs_no_weights()
    {
        var answer = await _client.SaltChecks.ComputeAsync(new()
        {
            Pile = [new() { Cut = "pork-shoulder" }],
            Treatments = [new() { Formula = Requests.Rub(), Retained = new() { Value = 95, Unit = "%" } }],
        });
        Assert.Equal(8.24, answer.Ledger.SaltPerKgGreen.Typical);
        Assert.NotEmpty(answer.Cautions);
    }

    [Fact]
    public async Task A_sauce_is_boiled_down_or_refused()
    {
        var glaze = new FormulaRequest
        {
            Name = "Glaze",
            Kind = "sauce",
            ReducedTo = QuantityRequest.Of(50, "%"),
            Lines =
            [
                new() { Ingredient = "sodium-chloride", Amount = QuantityRequest.Of(20, "g") },
                new() { Ingredient = "water", Amount = QuantityRequest.Of(980, "g") },
            ],
        };
        var sauce = await _client.Sauces.ComputeAsync(new() { Formula = glaze });
        Assert.Equal((new Quantity(500, "g"), 40), (sauce.Finished, sauce.SaltPerKgFinished.Typical));

        var refused = await Refused.WithAsync(
            HttpStatusCode.UnprocessableEntity, () => _client.Sauces.ComputeAsync(new() { Formula = glaze with { Kind = "rub" } }));
        Assert.Equal("reduction-not-allowed", Assert.Single(refused.Errors).Code);
    }

    [Fact]
    public async Task A_salt_check_of_two_lines_is_refused()
    {
        var refused = await Refused.WithAsync(HttpStatusCode.UnprocessableEntity, () => _client.SaltChecks.ComputeAsync(new()
        {
            Pile = [new() { Cut = "pork-shoulder" }, new() { Cut = "beef-brisket" }],
            Treatments = [new() { Formula = Requests.Rub() }],
        }));
        Assert.Contains(refused.Errors, e => (e.Pointer, e.Code) == ("/pile", "too-many"));
    }

    [Fact]
    public async Task A_body_beyond_the_limit_is_refused_with_413()
    {
        var pile = Requests.Shoulders() with { Pile = [new() { Cut = "pork-shoulder", Pieces = [new() { Label = new string('x', 5_000_000) }] }] };
        await Refused.WithAsync(HttpStatusCode.RequestEntityTooLarge, () => _client.BatchSheets.ComputeAsync(pile));
    }

    [Fact]
    public async Task A_day_of_dry_brine_comes_as_figures_and_as_a_picture()
    {
        var request = Requests.SaltedSlab();
        var answer = await _client.SaltingTimes.ComputeAsync(request);
        var picture = await _client.SaltingTimes.PlotAsync(request, "uptake");

        // ln 40 / pi2 x 25 mm2 / D.
        Assert.Equal(216.3, answer.TimeTo.Even95.Typical, 0.05);
        Assert.StartsWith("<svg", picture, StringComparison.Ordinal);
        Assert.Contains("Salt over time", picture, StringComparison.Ordinal);
        await Refused.WithAsync(HttpStatusCode.UnprocessableEntity, () => _client.SaltingTimes.PlotAsync(request, "pie & cake"));
        await Refused.WithAsync(HttpStatusCode.UnprocessableEntity, () => _client.SaltingTimes.ComputeAsync(request with { FacesTreated = 3 }));
    }
}
