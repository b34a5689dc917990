using System.Diagnostics.CodeAnalysis;
using RubLab.Core.Catalogues;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Sources;

namespace RubLab.Core.Ingredients;

/// <summary>What goes in a mix, with its salt kept apart from its sodium.</summary>
public sealed record Ingredient
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    /// <summary>Salt, pepper, chilli, spice, sugar, liquid and so on.</summary>
    public required string Group { get; init; }

    /// <summary>All sodium, whatever it is bound to.</summary>
    public required double SodiumMilligramsPer100Grams { get; init; }

    /// <summary>The sodium with its doubt: a band only where the salt was declared as one.</summary>
    public Band SodiumBandMilligramsPer100Grams => DeclaredSodiumMilligramsPer100Grams ?? Band.Exact(SodiumMilligramsPer100Grams);

    /// <summary>Sodium chloride alone.</summary>
    public required Band SaltGramsPer100Grams { get; init; }

    /// <summary>How far that figure is to be trusted.</summary>
    public Confidence SaltConfidence { get; init; }

    /// <summary>How the salt was told from the sodium.</summary>
    public required string SaltMethod { get; init; }

    public required double? WaterGramsPer100Grams { get; init; }

    public required double? SugarsGramsPer100Grams { get; init; }

    /// <summary>None where nobody published it.</summary>
    public double? FatGramsPer100Grams { get; init; }

    /// <summary>Limited additives it carries besides nitrite and nitrate, grams in 100 g, by the additive's name.</summary>
    public IReadOnlyDictionary<string, double> LimitedGramsPer100Grams { get; init; } = new Dictionary<string, double>();

    /// <summary>Declared nitrite, as sodium nitrite; none where nothing is declared.</summary>
    public double? NitriteGramsPer100Grams { get; init; }

    /// <summary>Declared nitrate, as sodium nitrate; none where nothing is declared.</summary>
    public double? NitrateGramsPer100Grams { get; init; }

    /// <summary>Its nitrite by the weight of the salt it is, over the same as sodium nitrite.</summary>
    public double OwnPerSodiumNitrite { get; init; } = 1;

    /// <summary>Its nitrate by the weight of the salt it is, over the same as sodium nitrate.</summary>
    public double OwnPerSodiumNitrate { get; init; } = 1;

    /// <summary>Allergens the plain food carries by definition.</summary>
    public required IReadOnlyList<string> Allergens { get; init; }

    /// <summary>Made to many recipes: its own label is the authority on what is in it.</summary>
    public required bool IsGenericCompound { get; init; }

    public required Citation Citation { get; init; }

    public required IReadOnlyList<IngredientForm> Forms { get; init; }

    public required IReadOnlyList<HouseholdMeasure> Measures { get; init; }

    /// <summary>What a clove, a stick or a packet of it weighs; empty where nothing of the kind is published.</summary>
    public required IReadOnlyList<PieceMeasure> PieceMeasures { get; init; }

    /// <summary>Weighed as salt, not merely containing some.</summary>
    public bool IsSalt => Group == "salt" || Id == "sodium-chloride";

    /// <summary>Carries nitrite or nitrate, whose load has legal limits.</summary>
    public bool IsCure => IsOfCures || NitriteGramsPer100Grams > 0 || NitrateGramsPer100Grams > 0;

    /// <summary>Sold as a cure: what it carries is declared on its pack.</summary>
    public bool IsOfCures => Group == "cure";

    /// <summary>A cure whose content the reference does not declare: the line must.</summary>
    public bool NeedsDeclaredContent => IsOfCures && NitriteGramsPer100Grams is null && NitrateGramsPer100Grams is null;

    /// <summary>The same cure with the content its pack declares; what is not nitrite or nitrate of a curing salt is sodium chloride.</summary>
    /// <param name="nitrite">Sodium nitrite, grams per gram; none to keep the reference's.</param>
    /// <param name="nitrate">Sodium nitrate, grams per gram; none to keep the reference's.</param>
    /// <param name="constants">Sodium of the three salts.</param>
    public Ingredient WithDeclaredCure(double? nitrite, double? nitrate, Constants constants)
    {
        var declared = this with
        {
            NitriteGramsPer100Grams = nitrite * 100 ?? NitriteGramsPer100Grams,
            NitrateGramsPer100Grams = nitrate * 100 ?? NitrateGramsPer100Grams,
        };
        if (SaltMethod != "part-of-sodium")
        {
            return declared;
        }

        var first = (declared.NitriteGramsPer100Grams ?? 0) / 100;
        var second = (declared.NitrateGramsPer100Grams ?? 0) / 100;
        var salt = Math.Max(0, 1 - first - second);
        return declared with
        {
            SaltGramsPer100Grams = Band.Exact(salt * 100),
            SodiumMilligramsPer100Grams = 100_000 * ((first * constants.SodiumInSodiumNitriteGramsPerGram)
                + (second * constants.SodiumInSodiumNitrateGramsPerGram) + (salt * constants.SodiumInSodiumChlorideGramsPerGram)),
        };
    }

    /// <summary>Sodium chloride in a gram of it, grams.</summary>
    public Band SaltGramsPerGram => SaltGramsPer100Grams.Over(100);

    /// <summary>All sodium in a gram of it, grams.</summary>
    public Band SodiumGramsPerGram => SodiumBandMilligramsPer100Grams.Over(100_000);

    private Band? DeclaredSodiumMilligramsPer100Grams { get; init; }

    /// <summary>The same ingredient with its salt as the kitchen measured it or its label states it; all its sodium is then
    /// taken to be that of the salt.</summary>
    /// <param name="saltPercent">Sodium chloride, percent of the ingredient's weight.</param>
    /// <param name="sodiumInSodiumChloride">Sodium in sodium chloride, grams per gram.</param>
    public Ingredient WithDeclaredSalt(Band saltPercent, double sodiumInSodiumChloride)
    {
        var sodium = saltPercent.Times(sodiumInSodiumChloride * 1000);
        return this with
        {
            SaltGramsPer100Grams = saltPercent,
            SodiumMilligramsPer100Grams = sodium.Typical,
            DeclaredSodiumMilligramsPer100Grams = sodium,
            SaltConfidence = Confidence.High,
        };
    }

    public IngredientForm DefaultForm => Forms.First(f => f.IsDefault);

    /// <summary>The forms a volume may be asked in, as a finding tells them: their ids for a program, their names as well for a cook.</summary>
    public Said MeasurableForms()
    {
        var measurable = Forms.Where(f => f.Density is not null).ToList();
        return new Said(measurable.Select(f => f.Id).ToArray(), string.Join("; ", measurable.Select(f => f.NameAndId)));
    }

    public bool TryFindForm(string id, [NotNullWhen(true)] out IngredientForm? form)
    {
        form = Forms.FirstOrDefault(f => f.Id == id);
        return form is not null;
    }
}
