using System.Text.Json;
using RubLab.Api.Http;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Core.Catalogues;

namespace RubLab.Api.OpenApi;

/// <summary>Examples of a kitchen's own densities: coarse salt, two quarter cups.</summary>
internal static class DensityExamples
{
    private const string At = "2026-03-14T08:30:00.000Z";

    public static IEnumerable<(string OperationId, OperationExample Example)> All(Catalogue catalogue)
    {
        var json = RubLabJson.Default;
        var request = ExampleBodies.Weighings();
        catalogue.TryFindIngredient("salt", out var salt);
        salt!.TryFindForm("flake-dense", out var form);
        var density = OwnDensities.From(OwnDensities.Check(request, catalogue).Value!, request, salt, form!, 1, At);
        var answer = JsonSerializer.SerializeToNode(density, json.OwnDensityResponse);
        yield return ("listDensities", new OperationExample
        {
            Summary = "One form weighed",
            Answer = JsonSerializer.SerializeToNode(new ListResponse<OwnDensityResponse>([density], null), json.ListResponseOwnDensityResponse),
            Refusal = ReferenceExamples.BadPage("densities"),
        });
        yield return ("getDensity", new OperationExample { Summary = "Two fillings of a quarter cup", Answer = answer });
        yield return ("putDensity", new OperationExample
        {
            Summary = "Two fillings of a quarter cup",
            Body = JsonSerializer.SerializeToNode(request, json.OwnDensityRequest),
            Answer = answer,
            Refusal = Problems.Of(OwnDensities.Check(ExampleBodies.UnsoundWeighings(), catalogue).Log),
        });
    }
}
