using RubLab.Api.Callers;
using RubLab.Api.Hosting;
using RubLab.Core.Catalogues;

namespace RubLab.Api.Http;

/// <summary>The reference data as the caller's kitchen sees it: with its own densities and cooking yields in place of the reference's.</summary>
/// <param name="Catalogue">What the request is computed with.</param>
/// <param name="DensityRevision">How often the kitchen has changed its densities; part of every tag computed with them.</param>
/// <param name="YieldRevision">How often the kitchen has changed its cooking yields.</param>
public sealed record KitchenCatalogue(Catalogue Catalogue, long DensityRevision, long YieldRevision)
{
    /// <summary>The tag of an answer computed from the reference data and the kitchen's densities alone.</summary>
    public string Tag => $"\"{Catalogue.Version}-d{DensityRevision}\"";

    /// <summary>Called by the framework for a handler's parameter.</summary>
    public static async ValueTask<KitchenCatalogue?> BindAsync(HttpContext http) =>
        await http.RequestServices.GetRequiredService<KitchenCatalogues>().OfAsync(Caller.Of(http), http.RequestAborted);
}
