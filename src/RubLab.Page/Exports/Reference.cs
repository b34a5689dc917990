using System.Runtime.InteropServices.JavaScript;
using System.Text.Json;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Reference;
using RubLab.Core.Catalogues;

namespace RubLab.Page.Exports;

/// <summary>The reference data, for the page's script: loaded once, then read in the API's own JSON.</summary>
public static partial class Reference
{
    private static Catalogue? _catalogue;

    internal static Catalogue Catalogue =>
        _catalogue ?? throw new InvalidOperationException("The reference data is not loaded yet.");

    /// <summary>The names of the files to fetch, a JSON array.</summary>
    [JSExport]
    public static string FileNames() => JsonSerializer.Serialize([.. SeedFiles.Names], RubLabJson.Default.StringArray);

    /// <summary>Reads the files, a JSON object of name to text, and gives the edition.</summary>
    /// <exception cref="InvalidDataException">A file is missing or wrong; the message says where.</exception>
    [JSExport]
    public static string Load(string files)
    {
        _catalogue = Catalogue.Read(JsonSerializer.Deserialize(files, PageJson.Default.DictionaryStringString) ?? []);
        return _catalogue.Version;
    }

    /// <summary>Every cut, as <c>GET /v1/cuts</c> lists them.</summary>
    [JSExport]
    public static string Cuts() => JsonSerializer.Serialize(
        new ListResponse<CutSummary>(Catalogue.Cuts.Select(ReferenceAnswers.Summary).ToList(), null),
        RubLabJson.Default.ListResponseCutSummary);

    /// <summary>One ingredient, as <c>GET /v1/ingredients/{id}</c> gives it; <c>null</c> where there is none.</summary>
    [JSExport]
    public static string Ingredient(string id) => Catalogue.TryFindIngredient(id, out var ingredient)
        ? JsonSerializer.Serialize(ReferenceAnswers.From(ingredient, Catalogue), RubLabJson.Default.IngredientResponse)
        : "null";
}
