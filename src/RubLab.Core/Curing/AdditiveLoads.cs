using RubLab.Core.Formulas;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Scaling;

namespace RubLab.Core.Curing;

/// <summary>
/// Legal loads of limited additives: all that is put on or in over every treatment and application, whatever of it stays. A pump counts
/// by the weight of its liquid. A soak counts as if it had evened out over meat and liquid together. The piece that gets most stands
/// for its line.
/// </summary>
public static class AdditiveLoads
{
    public const string Nitrite = "nitrite";
    public const string Nitrate = "nitrate";

    /// <summary>Liquid that stays in the meat.</summary>
    public const string Liquid = "liquid";

    /// <summary>Added water and ice, of all ingredients.</summary>
    public const string Water = "water";

    /// <summary>Sugars, which an alternative level of bacon asks for.</summary>
    public const string Sugar = "sugar";

    /// <summary>Fat of ground meat and all that is mixed in.</summary>
    public const string Fat = "fat";

    private const double PerMillionPerGramPerKilogram = 1000;
    private const double GramsPerKilogram = 1000;

    /// <summary>The loads of one line of a pile, in alphabetical order of the additives; those not brought are absent.</summary>
    /// <param name="pile">The pile.</param>
    /// <param name="line">Index of the line.</param>
    /// <param name="treatments">The whole stack; those not on this line are left out.</param>
    /// <param name="isWeighed">The mixes are weighed out; false for a card that is measured as written.</param>
    /// <param name="partWeighed">How much of its due whole weighing steps bring of a treatment's formula line, 0 to 1: the low end and the
    /// typical value are of that, the high end of the due. None where nothing is weighed yet.</param>
    public static IReadOnlyList<AdditiveLoad> Of(
        Pile pile, int line, IReadOnlyList<Treatment> treatments, bool isWeighed, Func<int, int, double>? partWeighed = null)
    {
        var shares = new SortedDictionary<string, List<AdditiveShare>>(StringComparer.Ordinal);
        var on = treatments.Select((t, i) => (Treatment: t, Index: i)).Where(t => t.Treatment.OnLines.Contains(line)).ToList();
        var ingredients = GramsPerKilogram + on.Sum(t => PutOn(t.Treatment, pile, line));
        var gain = LoadKnowledge.Known;
        foreach (var (treatment, index) in on)
        {
            var method = MethodOf(treatment, pile.Lines[line]);
            var putOn = PutOn(treatment, pile, line);
            var factor = putOn / treatment.Ratios.DoseGramsPerKilogram;
            for (var i = 0; i < treatment.Ratios.Lines.Count; i++)
            {
                var grams = treatment.Ratios.RatioOf(i, isWeighed, treatment.DoseGramsPerKilogram is not null).Times(factor);
                foreach (var content in ContentsOf(treatment.Ratios.Lines[i].Line, method))
                {
                    var perMillion = PerMillionPerGramPerKilogram * (
                        BaseOf(content.Additive) == LimitBase.Ingredients ? GramsPerKilogram / ingredients
                        : method == CuringMethod.Soak ? GramsPerKilogram / (GramsPerKilogram + putOn)
                        : 1);
                    var part = BaseOf(content.Additive) == LimitBase.GreenIngoing ? partWeighed?.Invoke(index, i) ?? 1 : 1;
                    Add(content.Additive, new AdditiveShare(
                        index, method, InPart(grams.Times(content.GramsPerGram).Times(perMillion), part),
                        InPart(grams.Times(content.OwnGramsPerGram).Times(perMillion), part), perMillion));
                }
            }

            if (method is CuringMethod.Injection or CuringMethod.Soak)
            {
                gain = (LoadKnowledge)Math.Max((int)gain, (int)GainKnowledge(treatment, line, method));
                var stays = method == CuringMethod.Soak
                    ? Band.Exact(0)
                    : treatment.RetainedPercentOn(line).Over(100).Times(putOn * PerMillionPerGramPerKilogram);
                Add(Liquid, new AdditiveShare(index, method, stays, stays, PerMillionPerGramPerKilogram));
            }
        }

        var loads = shares.ToDictionary(s => s.Key, s => new AdditiveLoad(s.Key, BaseOf(s.Key), s.Value)
        {
            Knowledge = s.Key == Liquid ? gain : LoadKnowledge.Known,
        });
        if (on.Count > 0 && pile.Lines[line].IsGround)
        {
            loads[Fat] = FatOf(pile.Lines[line].Cut, loads.TryGetValue(Fat, out var mixedIn) ? mixedIn.Shares : [], ingredients);
        }

        return loads.Values.OrderBy(l => l.Additive, StringComparer.Ordinal).ToList();

        void Add(string additive, AdditiveShare share)
        {
            if (share.PartsPerMillion.High <= 0 && additive != Liquid)
            {
                return;
            }

            if (!shares.TryGetValue(additive, out var all))
            {
                shares.Add(additive, all = []);
            }

            all.Add(share);
        }
    }

    private static Band InPart(Band due, double part) => new(due.Low * part, due.Typical * part, due.High);

    private static IEnumerable<(string Additive, Band GramsPerGram, Band OwnGramsPerGram)> ContentsOf(FormulaLine line, CuringMethod method)
    {
        foreach (var (additive, grams, own) in line.AdditivesGramsPerGram())
        {
            yield return (additive, Band.Exact(grams), Band.Exact(own));
        }

        if (line.Ingredient.SugarsGramsPer100Grams is > 0 and var sugars)
        {
            yield return (Sugar, Band.Exact(sugars / 100), Band.Exact(sugars / 100));
        }

        if (method == CuringMethod.Ground)
        {
            // Nobody published it: from none to all of the ingredient.
            var fat = line.Ingredient.FatGramsPer100Grams is { } known ? Band.Exact(known / 100) : new Band(0, 0, 1);
            yield return (Fat, fat, fat);
        }
    }

    // What a soak leaves in the meat of its liquid is not computed; what stays of a pump nobody stated is not known.
    private static LoadKnowledge GainKnowledge(Treatment treatment, int line, CuringMethod method) =>
        method == CuringMethod.Soak ? LoadKnowledge.Unknown
        : treatment.IsRetainedStatedOn(line) ? LoadKnowledge.Known
        : LoadKnowledge.Assumed;

    // The meat is not weighed for its fat: a reference's figure stands for it.
    private static AdditiveLoad FatOf(Cut cut, IReadOnlyList<AdditiveShare> mixedIn, double ingredients) => new(Fat, LimitBase.Ingredients, mixedIn)
    {
        OfMeatPartsPerMillion = Band.Exact(
            (cut.Composition?.FatGramsPer100Grams ?? 0) / 100 * GramsPerKilogram * GramsPerKilogram / ingredients * PerMillionPerGramPerKilogram),
        Knowledge = cut.Composition?.FatGramsPer100Grams is null ? LoadKnowledge.Unknown : LoadKnowledge.Assumed,
    };

    /// <summary>How a treatment's additives count on a line.</summary>
    public static CuringMethod MethodOf(Treatment treatment, PileLine line) => treatment.Ratios.Formula.Kind switch
    {
        FormulaKind.Injection => CuringMethod.Injection,
        FormulaKind.Soak => CuringMethod.Soak,
        _ => line.IsGround ? CuringMethod.Ground : CuringMethod.Dry,
    };

    private static LimitBase BaseOf(string additive) => additive switch
    {
        Liquid => LimitBase.GreenRetained,
        Water or Fat => LimitBase.Ingredients,
        _ => LimitBase.GreenIngoing,
    };

    // Grams of the whole formula per kilogram of green weight, for the piece that gets most.
    private static double PutOn(Treatment treatment, Pile pile, int line)
    {
        var perBase = treatment.DoseCounted * treatment.Applications;
        if (pile.Lines[line].WeighedGrams.Count == 0)
        {
            return perBase * (BaseWeight.PerKilogramGreen(treatment.Ratios, pile, line) ?? throw Unknown(nameof(treatment)));
        }

        var bases = BaseWeight.OfPieces(treatment.Ratios, pile, line) ?? throw Unknown(nameof(treatment));
        var greens = pile.GreenGramsOf(line);
        var factors = pile.DoseFactorsOf(line);
        double most = 0;
        for (var piece = 0; piece < bases.Length; piece++)
        {
            most = Math.Max(most, bases[piece] * factors[piece] / greens[piece] * GramsPerKilogram);
        }

        var pumped = treatment.Ratios.Formula.Kind == FormulaKind.Injection ? WeighedBack.PutInAtLeast(treatment, pile, line) : 1;
        return perBase * most * pumped;
    }

    private static ArgumentException Unknown(string parameter) => new("A treatment's base is not known for this line.", parameter);
}
