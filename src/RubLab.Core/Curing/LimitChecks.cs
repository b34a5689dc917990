using RubLab.Core.Catalogues;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Core.Curing;

/// <summary>The loads of one pile line against every legal level that goes with them.</summary>
public static class LimitChecks
{
    /// <summary>Every check, in the order of the limits. An alternative level is there only where it is met, with what else it asks for.</summary>
    /// <param name="loads">What is written: caps are held against it.</param>
    /// <param name="line">The pile line.</param>
    /// <param name="catalogue">The reference data.</param>
    /// <param name="weighed">What whole weighing steps bring of it, for levels to be met; none where nothing is weighed yet.</param>
    public static IReadOnlyList<LimitCheck> Of(
        IReadOnlyList<AdditiveLoad> loads, PileLine line, Catalogue catalogue, IReadOnlyList<AdditiveLoad>? weighed = null)
    {
        var met = catalogue.AdditiveLimits
            .Where(limit => limit is { Level: LimitLevel.Alternative, AskedBy: null } && limit.IsNamedFor(line.Product))
            .Select(limit => (Limit: limit, Load: Find(limit)))
            .Where(a => a.Load is not null && a.Limit.HoldsFor(a.Load))
            .Select(a => Check(a.Limit, a.Load!))
            .FirstOrDefault(check => check.Verdict == Verdict.Within);
        var checks = new List<LimitCheck>();
        foreach (var limit in catalogue.AdditiveLimits)
        {
            var load = Find(limit);
            if (limit.Level == LimitLevel.Alternative)
            {
                if (met is not null && (limit == met.Limit || limit.AskedBy == met.Limit.Id))
                {
                    checks.Add(Check(limit, load ?? None(limit)));
                }
            }
            else if (load is null ? IsMissing(limit, loads, line.Product) : GoesWith(limit, load, line.Product))
            {
                var check = Check(limit, load ?? None(limit));
                checks.Add(check.Verdict == Verdict.Below && limit.Additive == met?.Limit.Additive
                    ? check with { Advice = $"This level is not met, an alternative is: {met.Limit.Title}. {met.Limit.Note}" }
                    : check);
            }
        }

        return checks;

        AdditiveLoad? Find(AdditiveLimit limit) =>
            (limit.LowPartsPerMillion is not null && limit.IsNamedFor(line.Product) ? weighed ?? loads : loads).FirstOrDefault(l => l.Additive == limit.Additive);

        LimitCheck Check(AdditiveLimit limit, AdditiveLoad load) => LimitCheck.Of(
            limit, load, line.Product, line.SkinPercent ?? 0, line.YieldCountedPercent, catalogue.Constants.CureStepPercent);
    }

    private static AdditiveLoad None(AdditiveLimit limit) => new(limit.Additive, limit.Base, []);

    private static bool GoesWith(AdditiveLimit limit, AdditiveLoad load, string? product) =>
        limit.HoldsFor(load) && (limit.Level == LimitLevel.Minimum ? limit.IsNamedFor(product) : limit.HoldsFor(product)) && !HasItsOwnLevel(limit, load, product);

    // The level required of pumped bacon stands in place of the general cap of the same additive, which is a little below it.
    private static bool HasItsOwnLevel(AdditiveLimit limit, AdditiveLoad load, string? product) =>
        limit is { Methods.Count: 0, Additive: "ascorbate", IsOfBacon: false } && product == AdditiveLimit.Bacon && load.IsBy(CuringMethod.Injection);

    // An accelerator is required where nitrite is pumped into bacon, and its absence is told.
    private static bool IsMissing(AdditiveLimit limit, IReadOnlyList<AdditiveLoad> loads, string? product) =>
        limit.Level == LimitLevel.Required && limit.Additive != AdditiveLoads.Nitrite && limit.IsNamedFor(product)
        && loads.Any(l => l.Additive == AdditiveLoads.Nitrite && limit.HoldsFor(l));
}
