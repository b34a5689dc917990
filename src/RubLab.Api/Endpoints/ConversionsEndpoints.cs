using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using RubLab.Api.Http;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Json;
using RubLab.Contracts.Quantities;

namespace RubLab.Api.Endpoints;

internal static class ConversionsEndpoints
{
    public static void MapConversions(this RouteGroupBuilder api)
    {
        var routes = api.MapGroup("/conversions").WithTags("Measuring");
        routes.MapGet("/", Get)
            .Described(
                "convert", "One amount between mass and volume, by form.",
                "Leave form out and, if the forms of the ingredient differ by more than 15 %, the answer spans them all and a finding asks.")
            .Produces<ConversionResponse>()
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.Unprocessable);
        routes.MapPost("/", Post)
            .Described("convertMany", "A whole card at once, faults item by item.", "At most 1,000 items.")
            .Produces<ConversionsResponse>()
            .Refuses()
            .TakesBody();
    }

    private static IResult Get(
        HttpContext http, KitchenCatalogue kitchen,
        [FromQuery] string? ingredient, [FromQuery] string? form, [FromQuery] string? mesh, [FromQuery] string? micrometres,
        [FromQuery] string? value, [FromQuery] string? unit, [FromQuery] string? to)
    {
        var amount = new QuantityRequest { Unit = unit, Value = Number(value) };
        var result = Conversions.Compute(
            new ConversionItemRequest { Ingredient = ingredient, Form = form, Mesh = Number(mesh), Micrometres = Number(micrometres), Amount = amount, To = to }, kitchen.Catalogue, isQuery: true);
        return result.IsGood
            ? Answers.Tagged(http, kitchen.Tag, result.Value, RubLabJson.Default.ConversionResponse)
            : Problems.Of(result.Log);
    }

    private static IResult Post(HttpContext http, KitchenCatalogue kitchen, ConversionsRequest request)
    {
        var result = Conversions.Compute(request, kitchen.Catalogue);
        return result.IsGood
            ? Answers.Computed(http, result.Value, RubLabJson.Default.ConversionsResponse)
            : Problems.Of(result.Log);
    }

    // What is no number is read as one that no rule accepts, so that it is reported with the other faults.
    private static double? Number(string? text) => text is null
        ? null
        : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : double.NaN;
}
