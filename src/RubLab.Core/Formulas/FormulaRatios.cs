using RubLab.Core.Catalogues;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Sources;

namespace RubLab.Core.Formulas;

/// <summary>A formula resolved to ratios: from how the cook wrote it to grams per kilogram.</summary>
public sealed record FormulaRatios
{
    private FormulaRatios()
    {
    }

    public required Formula Formula { get; init; }

    public required IReadOnlyList<LineRatio> Lines { get; init; }

    /// <summary>The whole formula in grams per kilogram of the base (per 100 cm2 for an area base), typical.</summary>
    public required double DoseGramsPerKilogram { get; init; }

    /// <summary>What goes into the pot, in grams per kilogram of the base: the sum of the lines. More than the dose where a
    /// sauce is boiled down, else the dose.</summary>
    public double PotGramsPerKilogram => DoseGramsPerKilogram / (Formula.PercentLeft / 100);

    /// <summary>The weight the ratios stand on when an old card was written for meat as bought.</summary>
    public required WeightBasis RatiosAreOf { get; init; }

    /// <summary>Sodium chloride in the formula, percent of the formula as it goes on the meat.</summary>
    public required Band SaltSharePercent { get; init; }

    /// <summary>Bulk density of the mix, from powders side by side to closest packing; none where a line has none.</summary>
    public Band? BulkDensityGramsPerMillilitre => BlendDensity.Of(Lines);

    /// <summary>The mix's typical grain by mass; none where no form has a size.</summary>
    public double? GrainMillimetres => BlendDensity.GrainMillimetres(Lines);

    private Band[] Weights { get; init; } = [];

    /// <summary>Resolves a formula and notes what it notices.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="catalogue">The reference data.</param>
    /// <param name="findings">Takes what is noticed.</param>
    /// <param name="pointer">Where the formula stands in the request.</param>
    /// <param name="isInline">Its lines stand there too, and can be pointed at; false for a stored formula named by id.</param>
    public static FormulaRatios Of(Formula formula, Catalogue catalogue, FindingLog findings, string pointer, bool isInline = true)
    {
        var lines = formula.Lines;
        var choices = new DensityChoice[lines.Count];
        var weights = new Band[lines.Count];
        for (var i = 0; i < lines.Count; i++)
        {
            choices[i] = DensityChoice.For(lines[i].Ingredient, lines[i].NamedForm, catalogue.Constants.FormSpreadAsksPercent);
            weights[i] = WeightOf(lines[i], formula.Mode, choices[i]);
            if (IsByVolume(lines[i], formula.Mode))
            {
                Notice(lines[i], choices[i], findings, isInline ? $"{pointer}/lines/{i}" : pointer);
            }
        }

        var total = weights.Sum(w => w.Typical);
        var left = formula.PercentLeft / 100;
        var dose = formula.Dose ?? OwnDose(formula, total) * left;
        var pot = dose / left;
        var resolved = new LineRatio[lines.Count];
        for (var i = 0; i < lines.Count; i++)
        {
            var share = Blends.Share(weights, i);
            var ratio = formula.Dose is null ? weights[i].Times(pot / total) : AtFixedDose(share, pot, weights[i].Typical / total);
            resolved[i] = new LineRatio(lines[i], ratio, share, choices[i].Density);
        }

        var salts = lines.Select(l => l.Ingredient.SaltGramsPer100Grams).ToArray();
        var saltShare = Blends.WeightedMean(weights, salts).Over(left);
        if (!saltShare.IsExact && lines.Where((l, i) => IsByVolume(l, formula.Mode) && !choices[i].Form.FillsLevel).Any())
        {
            findings.Add("density-spread", pointer, null, ("treatment", formula.Name), ("low", saltShare.Low), ("high", saltShare.High));
        }

        return new FormulaRatios
        {
            Formula = formula,
            Lines = resolved,
            DoseGramsPerKilogram = dose,
            RatiosAreOf = formula is { Mode: AuthoringMode.Amounts, Dose: null } ? formula.WrittenForIs : WeightBasis.Green,
            SaltSharePercent = saltShare,
            Weights = weights,
        };
    }

    /// <summary>What one kilogram of the base gets of something the ingredients carry.</summary>
    /// <param name="gramsPerGram">How much of it a gram of an ingredient carries.</param>
    /// <param name="isWeighed">The mix is weighed out, which ends the doubt about densities; otherwise it is
    /// measured as the card says and the doubt stands.</param>
    /// <param name="isDosed">The mix is put on by a dose the treatment states: then its whole is certain and only
    /// the shares are in doubt, as with a dose of the formula's own.</param>
    public Band GramsPerKilogram(Func<Ingredient, Band> gramsPerGram, bool isWeighed, bool isDosed)
    {
        if (isWeighed || !(isDosed || Formula.Dose is not null))
        {
            var sum = Band.Exact(0);
            for (var i = 0; i < Lines.Count; i++)
            {
                sum = sum.Plus(RatioOf(i, isWeighed, isDosed).Times(gramsPerGram(Lines[i].Line.Ingredient)));
            }

            return sum;
        }

        var properties = Lines.Select(l => gramsPerGram(l.Line.Ingredient)).ToArray();
        return Blends.WeightedMean(Weights, properties).Times(PotGramsPerKilogram);
    }

    /// <summary>A line's grams per kilogram of the base, with the doubt that is left; see <see cref="GramsPerKilogram"/>.</summary>
    public Band RatioOf(int line, bool isWeighed, bool isDosed)
    {
        var ratio = Lines[line].RatioGramsPerKilogram;
        if (isWeighed)
        {
            return Band.Exact(ratio.Typical);
        }

        return isDosed && Formula.Dose is null
            ? AtFixedDose(Lines[line].Share, PotGramsPerKilogram, ratio.Typical / PotGramsPerKilogram)
            : ratio;
    }

    private static bool IsByVolume(FormulaLine line, AuthoringMode mode) =>
        mode == AuthoringMode.PartsByVolume || line.Unit.Dimension == Dimension.Volume;

    private static Band WeightOf(FormulaLine line, AuthoringMode mode, DensityChoice choice)
    {
        var amount = line.Unit.ToBase(line.Amount);
        return IsByVolume(line, mode) ? choice.Density!.GramsPerMillilitre.Times(amount) : Band.Exact(amount);
    }

    private static double OwnDose(Formula formula, double total) =>
        formula.Mode == AuthoringMode.Ratios ? total : total / formula.WrittenForGrams!.Value * 1000;

    // With the dose fixed the line's ratio moves with its share; the typical value is kept free of the rounding
    // that going through the share's own quotient would add.
    private static Band AtFixedDose(Band share, double dose, double typicalShare)
    {
        var typical = dose * typicalShare;
        return new Band(Math.Min(share.Low * dose, typical), typical, Math.Max(share.High * dose, typical));
    }

    private static void Notice(FormulaLine line, DensityChoice choice, FindingLog findings, string pointer)
    {
        var citation = choice.Density!.Citation;
        if (choice.Density.IsOwn)
        {
            findings.Add(
                "own-density-used", pointer, citation.SourceId,
                ("ingredient", line.Ingredient.Name), ("form", choice.Form.Name),
                ("density", Math.Round(choice.Density.GramsPerMillilitre.Typical, 3)),
                ("reference", choice.Density.ReferenceGramsPerMillilitre is { } reference ? Math.Round(reference, 3) : "none"));
        }

        if (choice.SpansForms)
        {
            findings.Add(
                "form-unnamed", pointer, citation.SourceId, ("ingredient", line.Ingredient.Name),
                ("forms", line.Ingredient.MeasurableForms()));
        }

        if (citation.Confidence >= Confidence.Low && !choice.SpansForms)
        {
            findings.Add(
                "density-low-confidence", pointer, citation.SourceId,
                ("ingredient", line.Ingredient.Name), ("form", choice.Form.Name));
        }
    }
}
