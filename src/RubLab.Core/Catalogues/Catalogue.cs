using System.Diagnostics.CodeAnalysis;
using RubLab.Core.Brining;
using RubLab.Core.Curing;
using RubLab.Core.Ingredients;
using RubLab.Core.Meat;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;
using RubLab.Core.Sauces;
using RubLab.Core.Serving;
using RubLab.Core.Sources;
using RubLab.Core.Timing;
using RubLab.Core.Yields;

namespace RubLab.Core.Catalogues;

/// <summary>
/// All reference data of one edition, immutable. Server and page read it from the same bytes; ids are never
/// removed in a later edition.
/// </summary>
public sealed class Catalogue
{
    private readonly Dictionary<string, Ingredient> _ingredients;
    private readonly Dictionary<string, Cut> _cuts;

    private Catalogue(IReadOnlyDictionary<string, string> files)
    {
        Version = files.TryGetValue("VERSION", out var version) && version.Trim() is { Length: > 0 } edition
            ? edition
            : throw new InvalidDataException("seed-data has no VERSION.");
        Sources = SourceTables.ReadSources(files);
        Constants = SourceTables.ReadConstants(files);
        Ingredients = IngredientTables.Read(files, Constants);
        Sieves = IngredientTables.ReadSieves(files);
        PowderFlows = IngredientTables.ReadFlow(files);
        Cuts = MeatTables.Read(files, Constants);
        Serving = ServingTables.Read(files);
        SaltRanges = SaltTables.ReadRanges(files);
        AdditiveLimits = CuringTables.ReadLimits(files);
        Products = SaltRanges.Select(r => r.AppliesTo).Concat(AdditiveLimits.SelectMany(l => l.Products)).Where(p => p != AdditiveLimit.AnyProduct)
            .Distinct().Order(StringComparer.Ordinal).ToList();
        SodiumReferences = SaltTables.ReadReferences(files);
        ReferenceAmounts = SaltTables.ReadReferenceAmounts(files);
        SodiumClaims = SaltTables.ReadClaims(files, ReferenceAmounts);
        Salting = SaltingTables.Read(files);
        FindingTexts = RemarkTables.ReadFindings(files).ToDictionary(f => f.Code, StringComparer.Ordinal);
        Cautions = RemarkTables.ReadCautions(files);
        Brines = BrineTables.Read(files);
        _ingredients = Ingredients.ToDictionary(i => i.Id, StringComparer.Ordinal);
        _cuts = Cuts.ToDictionary(c => c.Id, StringComparer.Ordinal);
    }

    private Catalogue(Catalogue reference, IReadOnlyList<Ingredient> ingredients, IReadOnlyList<Cut> cuts)
    {
        Version = reference.Version;
        Sources = reference.Sources;
        Constants = reference.Constants;
        Ingredients = ingredients;
        Sieves = reference.Sieves;
        PowderFlows = reference.PowderFlows;
        Cuts = cuts;
        Serving = reference.Serving;
        SaltRanges = reference.SaltRanges;
        AdditiveLimits = reference.AdditiveLimits;
        Products = reference.Products;
        SodiumReferences = reference.SodiumReferences;
        ReferenceAmounts = reference.ReferenceAmounts;
        SodiumClaims = reference.SodiumClaims;
        Salting = reference.Salting;
        FindingTexts = reference.FindingTexts;
        Cautions = reference.Cautions;
        Brines = reference.Brines;
        _ingredients = ingredients.ToDictionary(i => i.Id, StringComparer.Ordinal);
        _cuts = cuts.ToDictionary(c => c.Id, StringComparer.Ordinal);
    }

    /// <summary>The edition, e.g. <c>2026.3</c>; every computed answer names it.</summary>
    public string Version { get; }

    public IReadOnlyList<Source> Sources { get; }

    public Constants Constants { get; }

    public IReadOnlyList<Ingredient> Ingredients { get; }

    public IReadOnlyList<Sieve> Sieves { get; }

    public IReadOnlyList<PowderFlow> PowderFlows { get; }

    public IReadOnlyList<Cut> Cuts { get; }

    public ServingReference Serving { get; }

    public IReadOnlyList<SaltRange> SaltRanges { get; }

    /// <summary>Legal levels of limited additives.</summary>
    public IReadOnlyList<AdditiveLimit> AdditiveLimits { get; }

    /// <summary>What can be made of meat that the ranges and limits know, in alphabetical order.</summary>
    public IReadOnlyList<string> Products { get; }

    public IReadOnlyList<SodiumReference> SodiumReferences { get; }

    public IReadOnlyList<ReferenceAmount> ReferenceAmounts { get; }

    public IReadOnlyList<SodiumClaim> SodiumClaims { get; }

    /// <summary>How far salt gets in a time, and how surely.</summary>
    public SaltingReference Salting { get; }

    public IReadOnlyDictionary<string, FindingText> FindingTexts { get; }

    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>What is known of salt solutions, and the figures brines are reckoned with.</summary>
    public BrineFigures Brines { get; }

    /// <summary>Reads an edition from its files, name to text.</summary>
    /// <exception cref="InvalidDataException">A file, column or figure is missing or wrong; the message says where.</exception>
    public static Catalogue Read(IReadOnlyDictionary<string, string> files) => new(files);

    /// <summary>The same edition with a kitchen's own densities in place of the reference's.</summary>
    /// <param name="densities">By ingredient and form id; those of ids the edition does not have are passed over.</param>
    public Catalogue With(IReadOnlyDictionary<(string Ingredient, string Form), OwnDensity> densities) => densities.Count == 0
        ? this
        : new Catalogue(this, Ingredients.Select(i => WithOwn(i, densities)).ToList(), Cuts);

    /// <summary>The same edition with a kitchen's own cooking yields beside the reference's.</summary>
    /// <param name="yields">By cut id; those of ids the edition does not have are passed over.</param>
    public Catalogue With(IReadOnlyDictionary<string, IReadOnlyList<OwnYield>> yields) => yields.Count == 0
        ? this
        : new Catalogue(this, Ingredients, Cuts.Select(cut => yields.TryGetValue(cut.Id, out var own) ? cut with { OwnYields = own } : cut).ToList());

    private static Ingredient WithOwn(Ingredient ingredient, IReadOnlyDictionary<(string Ingredient, string Form), OwnDensity> densities) =>
        ingredient.Forms.Any(f => densities.ContainsKey((ingredient.Id, f.Id)))
            ? ingredient with
            {
                Forms = ingredient.Forms.Select(form => densities.TryGetValue((ingredient.Id, form.Id), out var own)
                    ? form with { Density = own.AsBulkDensity(form.Density) }
                    : form).ToList(),
            }
            : ingredient;

    public bool TryFindIngredient(string id, [NotNullWhen(true)] out Ingredient? ingredient) =>
        _ingredients.TryGetValue(id, out ingredient);

    public bool TryFindCut(string id, [NotNullWhen(true)] out Cut? cut) => _cuts.TryGetValue(id, out cut);
}
