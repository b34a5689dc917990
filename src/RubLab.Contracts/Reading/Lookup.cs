using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Ingredients;
using RubLab.Core.Meat;

namespace RubLab.Contracts.Reading;

/// <summary>Looks ids of the reference data up; an unknown one is noted where it stands.</summary>
internal static class Lookup
{
    public static Ingredient? Ingredient(string? id, Catalogue catalogue, Place at)
    {
        if (id is null)
        {
            Reader.Missing(at);
            return null;
        }

        if (catalogue.TryFindIngredient(id, out var ingredient))
        {
            return ingredient;
        }

        at.Fault("unknown-ingredient", $"There is no ingredient '{Shown.Text(id)}'.", ("value", Shown.Text(id)));
        return null;
    }

    public static IngredientForm? Form(string? id, Ingredient? ingredient, Place at)
    {
        if (id is null || ingredient is null)
        {
            return null;
        }

        if (ingredient.TryFindForm(id, out var form))
        {
            return form;
        }

        var known = ingredient.Forms.Select(f => f.Id).ToArray();
        at.Fault(
            "unknown-form", $"{ingredient.Name} has no form '{Shown.Text(id)}'. It has: {string.Join("; ", ingredient.Forms.Select(f => f.NameAndId))}.",
            ("value", Shown.Text(id)), ("allowed", known));
        return null;
    }

    /// <summary>A product the reference data has salt ranges for.</summary>
    public static string? Product(string? id, Catalogue catalogue, Place at)
    {
        if (id is null || catalogue.Products.Contains(id))
        {
            return id;
        }

        at.Fault(
            "unknown-product", $"There is no product '{Shown.Text(id)}'. There are: {string.Join(", ", catalogue.Products)}.",
            ("value", Shown.Text(id)), ("allowed", catalogue.Products.ToArray()));
        return null;
    }

    /// <summary>An animal the reference data has a diffusivity of salt for.</summary>
    public static string? SaltedSpecies(string id, Catalogue catalogue, Place at)
    {
        if (catalogue.Salting.TryFindDiffusivity(id, out _))
        {
            return id;
        }

        var known = catalogue.Salting.Diffusivities.Where(d => d.IsDefault).Select(d => d.Species).ToArray();
        at.Fault(
            "unknown-species", $"How fast salt travels in '{Shown.Text(id)}' is not on record. It is for {string.Join(", ", known)}.",
            ("value", Shown.Text(id)), ("allowed", known));
        return null;
    }

    public static Cut? Cut(string? id, Catalogue catalogue, Place at)
    {
        if (id is null)
        {
            Reader.Missing(at);
            return null;
        }

        if (catalogue.TryFindCut(id, out var cut))
        {
            return cut;
        }

        at.Fault("unknown-cut", $"There is no cut '{Shown.Text(id)}'.", ("value", Shown.Text(id)));
        return null;
    }
}
