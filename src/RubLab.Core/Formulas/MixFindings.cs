using RubLab.Core.Catalogues;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Sources;

namespace RubLab.Core.Formulas;

/// <summary>What a cook should know about a mix before any of it is on meat.</summary>
public static class MixFindings
{
    /// <summary>Notes grains that part, flakes by the spoon and, where the cooker is known, sugar that scorches.</summary>
    /// <param name="ratios">The mix.</param>
    /// <param name="cookerCelsius">Temperature of the cooker; none where nobody said.</param>
    /// <param name="catalogue">The reference data.</param>
    /// <param name="findings">Takes what is noticed.</param>
    /// <param name="pointer">Where the formula stands in the request.</param>
    public static void Notice(FormulaRatios ratios, double? cookerCelsius, Catalogue catalogue, FindingLog findings, string pointer)
    {
        NoticeParting(ratios, catalogue, findings, pointer);
        foreach (var line in ratios.Lines)
        {
            NoticeFlakes(line, ratios.Formula, findings, pointer);
            if (line.Share.Typical > 0 && line.Line.Ingredient is { SaltConfidence: >= Confidence.Low } unsure)
            {
                findings.Add(
                    "salt-low-confidence", pointer, unsure.Citation.SourceId, ("ingredient", unsure.Name), ("treatment", ratios.Formula.Name),
                    ("low", unsure.SaltGramsPer100Grams.Low), ("high", unsure.SaltGramsPer100Grams.High));
            }
        }

        if (cookerCelsius is { } celsius)
        {
            NoticeSugar(ratios, celsius, catalogue, findings, pointer);
        }
    }

    private static void NoticeParting(FormulaRatios ratios, Catalogue catalogue, FindingLog findings, string pointer)
    {
        if (ratios.Formula.Kind is not (FormulaKind.DryBrine or FormulaKind.Rub))
        {
            return;
        }

        LineRatio? finest = null;
        LineRatio? coarsest = null;
        foreach (var line in ratios.Lines)
        {
            if (line.Share.Typical <= 0 || line.Line.Form.MiddleMicrometres is not { } size)
            {
                continue;
            }

            finest = finest is null || size < finest.Line.Form.MiddleMicrometres ? line : finest;
            coarsest = coarsest is null || size > coarsest.Line.Form.MiddleMicrometres ? line : coarsest;
        }

        var limit = catalogue.Constants.SeparatesSizeRatio;
        if (finest is not null && coarsest!.Line.Form.MiddleMicrometres > finest.Line.Form.MiddleMicrometres * limit)
        {
            findings.Add(
                "coarse-with-fine", pointer, coarsest.Density?.Citation.SourceId,
                ("coarse", $"{coarsest.Line.Ingredient.Name}, {coarsest.Line.Form.Name}"),
                ("fine", $"{finest.Line.Ingredient.Name}, {finest.Line.Form.Name}"),
                ("ratio", limit), ("treatment", ratios.Formula.Name));
        }
    }

    private static void NoticeFlakes(LineRatio line, Formula formula, FindingLog findings, string pointer)
    {
        var isByVolume = formula.Mode == AuthoringMode.PartsByVolume || line.Line.Unit.Dimension == Dimension.Volume;
        if (isByVolume && line.Line.Ingredient.IsSalt && line.Line.NamedForm is { } form && line.Density is { } density
            && form.Id.Contains("flake", StringComparison.Ordinal))
        {
            var spoon = density.GramsPerMillilitre.Times(UnitTable.Get("tbsp").Factor);
            findings.Add(
                "rub-by-volume-on-flake", pointer, density.Citation.SourceId,
                ("ingredient", line.Line.Ingredient.Name), ("form", form.Name), ("treatment", formula.Name),
                ("low", Math.Round(spoon.Low, 1)), ("high", Math.Round(spoon.High, 1)));
        }
    }

    private static void NoticeSugar(FormulaRatios ratios, double celsius, Catalogue catalogue, FindingLog findings, string pointer)
    {
        var limits = catalogue.Constants;
        double sugar = 0;
        foreach (var line in ratios.Lines)
        {
            sugar += line.Share.Typical * (line.Line.Ingredient.SugarsGramsPer100Grams ?? 0);
        }

        if (celsius > limits.SugarScorchTemperatureCelsius && sugar > limits.SugarScorchSharePercent)
        {
            findings.Add(
                "sugar-scorch", pointer, limits.SugarScorchSourceId,
                ("share", Math.Round(sugar, 1)), ("treatment", ratios.Formula.Name),
                ("temperature", celsius), ("limit", limits.SugarScorchTemperatureCelsius));
        }
    }
}
