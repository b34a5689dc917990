using System.Runtime.InteropServices.JavaScript;
using System.Text;
using System.Text.Json;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Reference;
using RubLab.Core.Catalogues;
using RubLab.Core.Ingredients;
using RubLab.Core.Yields;

namespace RubLab.Page.Exports;

/// <summary>The reference data, for the page's script: loaded once, then read in the API's own JSON.</summary>
public static partial class Reference
{
    private static Catalogue? _edition;
    private static Catalogue? _catalogue;
    private static IReadOnlyDictionary<(string Ingredient, string Form), OwnDensity> _densities = new Dictionary<(string, string), OwnDensity>();
    private static IReadOnlyDictionary<string, IReadOnlyList<OwnYield>> _yields = new Dictionary<string, IReadOnlyList<OwnYield>>();

    /// <summary>With the kitchen's own densities and yields in it.</summary>
    internal static Catalogue Catalogue => _catalogue ?? Edition;

    internal static Catalogue Edition =>
        _edition ?? throw new InvalidOperationException("The reference data is not loaded yet.");

    internal static void Use(IReadOnlyDictionary<(string Ingredient, string Form), OwnDensity> densities)
    {
        _densities = densities;
        _catalogue = Edition.With(_densities).With(_yields);
    }

    internal static void Use(IReadOnlyDictionary<string, IReadOnlyList<OwnYield>> yields)
    {
        _yields = yields;
        _catalogue = Edition.With(_densities).With(_yields);
    }

    /// <summary>Reads the reference data that comes with the page, and gives its edition.</summary>
    [JSExport]
    public static string Load()
    {
        _edition = Catalogue.Read(SeedFiles.Names.ToDictionary(name => name, Text));
        return _edition.Version;
    }

    /// <summary>Every cut, as <c>GET /v1/cuts</c> lists them.</summary>
    [JSExport]
    public static string Cuts() => JsonSerializer.Serialize(
        new ListResponse<CutSummary>(Catalogue.Cuts.Select(ReferenceAnswers.Summary).ToList(), null),
        AnswerJson.Default.ListResponseCutSummary);

    /// <summary>One cut, as <c>GET /v1/cuts/{id}</c> gives it; <c>null</c> where there is none.</summary>
    [JSExport]
    public static string Cut(string id) => Catalogue.TryFindCut(id, out var cut)
        ? JsonSerializer.Serialize(ReferenceAnswers.From(cut, Catalogue), AnswerJson.Default.CutResponse)
        : "null";

    /// <summary>Every ingredient, as <c>GET /v1/ingredients</c> lists them.</summary>
    [JSExport]
    public static string Ingredients() => JsonSerializer.Serialize(
        new ListResponse<IngredientSummary>(Catalogue.Ingredients.Select(ReferenceAnswers.Summary).ToList(), null),
        AnswerJson.Default.ListResponseIngredientSummary);

    /// <summary>Every source, as <c>GET /v1/sources</c> lists them.</summary>
    [JSExport]
    public static string Sources() => JsonSerializer.Serialize(
        new ListResponse<SourceResponse>(Catalogue.Sources.Select(ReferenceAnswers.From).ToList(), null),
        AnswerJson.Default.ListResponseSourceResponse);

    /// <summary>The codes of every currency prices may be in, a JSON array.</summary>
    [JSExport]
    public static string Currencies() => JsonSerializer.Serialize([.. Edition.Serving.Currencies.Select(c => c.Code)], RequestJson.Default.StringArray);

    /// <summary>What an authority sets for a day, in milligrams of sodium; the id is that of the check against it.</summary>
    [JSExport]
    public static double SodiumOfADay(string id) => Catalogue.SodiumReferences.First(reference => reference.Id == id).SodiumMilligrams;

    /// <summary>One ingredient, as <c>GET /v1/ingredients/{id}</c> gives it; <c>null</c> where there is none.</summary>
    [JSExport]
    public static string Ingredient(string id) => Catalogue.TryFindIngredient(id, out var ingredient)
        ? JsonSerializer.Serialize(ReferenceAnswers.From(ingredient, Catalogue), AnswerJson.Default.IngredientResponse)
        : "null";

    private static string Text(string name)
    {
        using var file = typeof(Reference).Assembly.GetManifestResourceStream(name) ?? throw new InvalidDataException($"The page comes without {name}.");
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return Encoding.UTF8.GetString(bytes);
    }
}
