using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Remarks;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Formulas;

/// <summary>Reads a formula back: as authored, and what it comes to.</summary>
public static class FormulaAnswers
{
    /// <summary>Checks a formula as sent.</summary>
    public static Result<Formula> Check(FormulaRequest request, Catalogue catalogue)
    {
        var log = new FaultLog();
        return log.ResultOf(FormulaReader.Read(request, catalogue, log.Root));
    }

    /// <summary>A stored formula to be shown; none where no answer can be worked of it.</summary>
    public static Formula? Stored(FormulaRequest authored, Catalogue catalogue) =>
        FormulaReader.Read(authored, catalogue, new FaultLog().Root, isToShow: true);

    /// <summary>The answer for a sound formula under its id and revision.</summary>
    public static FormulaResponse From(Formula formula, FormulaRequest authored, string id, long revision, string updatedAt, Catalogue catalogue)
    {
        var findings = new FindingLog(catalogue);
        var ratios = FormulaRatios.Of(formula, catalogue, findings, "");
        MixFindings.Notice(ratios, null, catalogue, findings, "");
        var unit = UnitOf(formula.Base);
        return new FormulaResponse
        {
            Id = id,
            Revision = revision,
            Name = formula.Name,
            Kind = Vocabulary.Kinds[formula.Kind],
            Base = Vocabulary.Bases[formula.Base],
            Dose = AsSent(authored.Dose),
            WrittenFor = AsSent(authored.WrittenFor),
            WrittenForIs = authored.WrittenFor is null ? null : Vocabulary.Weights[formula.WrittenForIs],
            ReducedTo = AsSent(authored.ReducedTo),
            Lines = ratios.Lines.Select(line => From(line, unit)).ToList(),
            TotalRatio = new Quantity(Rounded.Exact(ratios.DoseGramsPerKilogram), unit),
            SaltShare = QuantityBand.From(ratios.SaltSharePercent, "%", Rounded.Estimate),
            // Powders lie beside each other; salt and sugar dissolve, and what they make of a liquid is another law.
            BulkDensity = formula.Kind is not (FormulaKind.Injection or FormulaKind.Soak) && ratios.BulkDensityGramsPerMillilitre is { } density ? QuantityBand.From(density, "g/mL", Rounded.Estimate) : null,
            Findings = FindingResponse.From(findings),
            UpdatedAt = updatedAt,
            DataVersion = catalogue.Version,
        };
    }

    /// <summary>The unit a formula's ratios are read in.</summary>
    internal static string UnitOf(RatioBase ratioBase) => ratioBase == RatioBase.Area ? "g/100cm2" : "g/kg";

    /// <summary>A formula as it would be sent, its dose in grams per base.</summary>
    internal static AuthoredFormula Authored(Formula formula) => new()
    {
        Name = formula.Name,
        Kind = Vocabulary.Kinds[formula.Kind],
        Base = formula.Base == RatioBase.Green ? null : Vocabulary.Bases[formula.Base],
        Dose = formula.Dose is { } dose ? new Quantity(Rounded.Exact(dose), UnitOf(formula.Base)) : null,
        WrittenFor = formula.WrittenForGrams is { } grams ? new Quantity(Rounded.Exact(grams), "g") : null,
        WrittenForIs = formula is { WrittenForGrams: not null, WrittenForIs: WeightBasis.Purchase } ? Vocabulary.Weights[formula.WrittenForIs] : null,
        ReducedTo = formula.PercentLeft < 100 ? new Quantity(Rounded.Exact(formula.PercentLeft), "%") : null,
        Lines = formula.Lines.Select(line => new AuthoredLine
        {
            Ingredient = line.Ingredient.Id,
            Form = line.NamedForm?.Id,
            Amount = line.IsRest ? null : new Quantity(Rounded.Exact(line.Amount), line.Unit.Symbol),
            Salt = Declared(line),
            NitriteFraction = line.NitriteFraction,
            NitrateFraction = line.NitrateFraction,
        }).ToList(),
    };

    private static FormulaLineResponse From(LineRatio line, string unit)
    {
        var ratio = line.RatioGramsPerKilogram;
        return new FormulaLineResponse
        {
            Ingredient = line.Line.Ingredient.Id,
            Form = line.Line.NamedForm?.Id,
            Amount = line.Line.IsRest ? null : new Quantity(line.Line.Amount, line.Line.Unit.Symbol),
            Salt = Declared(line.Line),
            NitriteFraction = line.Line.NitriteFraction,
            NitrateFraction = line.Line.NitrateFraction,
            Ratio = QuantityBand.From(ratio, unit, ratio.IsExact ? Rounded.Exact : Rounded.Estimate),
            Share = QuantityBand.From(line.Share.Times(100), "%", line.Share.IsExact ? Rounded.Exact : Rounded.Estimate),
            Density = DensityResponse.From(line.Density),
        };
    }

    private static QuantityBand? Declared(FormulaLine line) =>
        line.DeclaredSaltPercent is { } salt ? QuantityBand.From(salt, "%", Rounded.Exact) : null;

    private static Quantity? AsSent(QuantityRequest? quantity) =>
        quantity is { Value: { } value, Unit: { } unit } ? new Quantity(value, unit) : null;
}
