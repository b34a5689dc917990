using System.Globalization;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Ingredients;

namespace RubLab.Contracts.Ingredients;

/// <summary>Reads a grind given as a US mesh number or in micrometres, instead of by name.</summary>
internal static class GrindReader
{
    private static readonly Bounds Micrometres = new(1, 100_000, true, "um");

    /// <summary>The size asked for; none when neither is given.</summary>
    public static double? Read(double? mesh, double? micrometres, bool hasForm, Catalogue catalogue, Place at)
    {
        if (mesh is null && micrometres is null)
        {
            return null;
        }

        if (hasForm || (mesh is not null && micrometres is not null))
        {
            at.At(mesh is not null ? "mesh" : "micrometres").Fault("one-or-the-other", "Name the grind once: by form, by mesh or in micrometres.");
            return null;
        }

        return micrometres is { } size
            ? Reader.Within(size, Micrometres, at.At("micrometres"))
            : OpeningOf(mesh!.Value, catalogue, at.At("mesh"));
    }

    /// <summary>The density for a size of an ingredient; outside everything measured it is refused.</summary>
    public static DensityChoice? Choose(Ingredient ingredient, double micrometres, Place at)
    {
        if (GrindSize.Choose(ingredient, micrometres) is { } choice)
        {
            return choice;
        }

        var known = GrindSize.Span(ingredient) is { } span
            ? string.Create(CultureInfo.InvariantCulture, $"it is known from {span.Low:0} to {span.High:0} um")
            : "no form of it has a known size";
        at.Fault(
            "size-not-measured",
            string.Create(CultureInfo.InvariantCulture, $"{ingredient.Name} at {micrometres:0} um: {known}. Name a form instead."),
            ("ingredient", ingredient.Id), ("micrometres", micrometres));
        return null;
    }

    private static double? OpeningOf(double mesh, Catalogue catalogue, Place at)
    {
        if (!double.IsFinite(mesh))
        {
            at.Fault("not-finite", "This is not a number.");
            return null;
        }

        foreach (var sieve in catalogue.Sieves)
        {
            if (sieve.UsMesh == mesh)
            {
                return sieve.OpeningMicrometres;
            }
        }

        // Semicolons, since a comma marks decimals for many readers.
        var known = catalogue.Sieves.Select(s => s.UsMesh.ToString(CultureInfo.InvariantCulture)).ToArray();
        at.Fault("unknown-mesh", $"There is no such test sieve. US mesh numbers are {string.Join("; ", known)}.", ("value", mesh), ("allowed", known));
        return null;
    }
}
