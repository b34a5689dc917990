using System.Collections.Concurrent;
using System.Text.Json;
using RubLab.Api.Callers;
using RubLab.Api.Http;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Json;
using RubLab.Contracts.Yields;
using RubLab.Core.Catalogues;
using RubLab.Core.Ingredients;
using RubLab.Core.Yields;
using RubLab.Storage;

namespace RubLab.Api.Hosting;

/// <summary>Each kitchen's view of the reference data, kept for a moment so that most requests ask the store nothing.</summary>
public sealed class KitchenCatalogues(Catalogue reference, Database database, TimeProvider clock)
{
    // What another process writes is seen after this long; what this one writes, at once.
    private static readonly TimeSpan Fresh = TimeSpan.FromSeconds(1);

    private readonly ConcurrentDictionary<string, Held> _held = new(StringComparer.Ordinal);

    public async ValueTask<KitchenCatalogue> OfAsync(Caller caller, CancellationToken cancellation)
    {
        var known = _held.GetValueOrDefault(caller.KitchenId);
        if (known is not null && clock.GetElapsedTime(known.ReadAt) < Fresh)
        {
            return known.Catalogue;
        }

        var readAt = clock.GetTimestamp();
        await using var work = await database.BeginAsync(Intent.Read, cancellation);
        var kitchen = await work.Kitchens.GetAsync(caller.KitchenId, cancellation);
        var (densities, yields) = (kitchen?.DensityRevision ?? 0, kitchen?.YieldRevision ?? 0);
        var catalogue = known?.Catalogue is { } held && held.DensityRevision == densities && held.YieldRevision == yields
            ? held
            : new KitchenCatalogue(await OverlayAsync(work, caller.KitchenId, cancellation), densities, yields);
        _held[caller.KitchenId] = new Held(catalogue, readAt);
        return catalogue;
    }

    /// <summary>Forgets a kitchen whose densities or yields this process has just changed.</summary>
    public void Forget(string kitchenId) => _held.TryRemove(kitchenId, out _);

    private async Task<Catalogue> OverlayAsync(UnitOfWork work, string kitchenId, CancellationToken cancellation)
    {
        var own = new Dictionary<(string Ingredient, string Form), OwnDensity>();
        foreach (var stored in await work.Densities.AllAsync(kitchenId, cancellation))
        {
            var request = JsonSerializer.Deserialize(stored.Document, RubLabJson.Default.OwnDensityRequest)!;
            if (OwnDensities.Check(request, reference).Value is { } density)
            {
                own[(stored.Key.IngredientId, stored.Key.FormId)] = density;
            }
        }

        return reference.With(own).With(await YieldsAsync(work, kitchenId, cancellation));
    }

    private async Task<Dictionary<string, IReadOnlyList<OwnYield>>> YieldsAsync(UnitOfWork work, string kitchenId, CancellationToken cancellation)
    {
        var own = new Dictionary<string, IReadOnlyList<OwnYield>>(StringComparer.Ordinal);
        foreach (var stored in await work.Yields.AllAsync(kitchenId, cancellation))
        {
            var request = JsonSerializer.Deserialize(stored.Document, RubLabJson.Default.OwnYieldRequest)!;
            if (reference.TryFindCut(stored.Key.CutId, out var cut) && OwnYieldRecords.Check(request, cut, reference).Value is { } yields)
            {
                own[stored.Key.CutId] = yields;
            }
        }

        return own;
    }

    private sealed record Held(KitchenCatalogue Catalogue, long ReadAt);
}
