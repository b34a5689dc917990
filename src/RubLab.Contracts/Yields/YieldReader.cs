using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Meat;
using RubLab.Core.Yields;

namespace RubLab.Contracts.Yields;

/// <summary>Chooses the yield of a cut, or notes why there is none.</summary>
internal static class YieldReader
{
    public static YieldChoice? Choose(Cut cut, YieldRequest asked, Catalogue catalogue, Place at)
    {
        if (YieldChoice.Of(cut, asked, catalogue, out var isImpossible) is { } choice)
        {
            return choice;
        }

        if (isImpossible)
        {
            at.At("cookYield").Fault(
                "yield-below-bone", $"At this yield {cut.Name} would be bone alone: give the bone it has, 0 for boneless meat, or a higher yield.");
        }
        else if (asked is { Method: { } method, ByPurchaseYield: false } && MethodsOf(cut, catalogue) is { Length: > 0 } known && !known.Contains(method))
        {
            at.At("method").Fault(
                "unknown-method", $"No yield of {cut.Name} is known for '{Shown.Text(method)}'. Known: {string.Join(", ", known)}; or give a cookYield.",
                ("value", Shown.Text(method)), ("allowed", known));
        }
        else
        {
            at.At("cookYield").Fault(
                "yield-required", $"No yield of {cut.Name} is known that fits here: give its cookYield.", ("cut", cut.Id));
        }

        return null;
    }

    private static string[] MethodsOf(Cut cut, Catalogue catalogue) => cut.CookYields.Select(y => y.Method)
        .Concat(cut.OwnYields.Select(y => y.Method).OfType<string>())
        .Concat(catalogue.Serving.PurchaseYieldsOf(cut.Id).Select(y => y.Method).OfType<string>())
        .Distinct(StringComparer.Ordinal).ToArray();
}
