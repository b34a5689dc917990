using RubLab.Core.Catalogues;

namespace RubLab.Contracts.Outputs;

/// <summary>Ingredients and forms as a cook calls them.</summary>
internal static class IngredientNames
{
    /// <summary>The name, and the form where one is meant; ids where the catalogue has no such thing.</summary>
    public static string Of(string ingredient, string? form, Catalogue catalogue)
    {
        if (!catalogue.TryFindIngredient(ingredient, out var found))
        {
            return form is null ? ingredient : $"{ingredient} ({form})";
        }

        if (form is null)
        {
            return found.Name;
        }

        return $"{found.Name} ({(found.TryFindForm(form, out var named) ? InSentence(named.Name) : form)})";
    }

    private static string InSentence(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
