using RubLab.Contracts.Brining;
using RubLab.Contracts.Reading;
using RubLab.Core.Brining;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Scaling;

/// <summary>What only liquids in and around the meat have in a treatment: temperature, strength, and of a soak its time and its bath.</summary>
internal static class LiquidReader
{
    /// <summary>Reads these members onto a treatment, noting every fault.</summary>
    public static Treatment Read(Treatment treatment, TreatmentRequest request, Catalogue catalogue, FindingLog findings, Place at)
    {
        var kind = treatment.Ratios.Formula.Kind;
        RefuseOthers(request, kind, at);
        if (kind is not (FormulaKind.Injection or FormulaKind.Soak))
        {
            return treatment;
        }

        var celsius = Reader.Amount(request.Temperature, at.At("temperature"), BoundsOfBrines.LiquidCelsius, isRequired: false, Dimension.Temperature);
        if (request.Temperature is null)
        {
            findings.Add(
                "temperature-assumed", at.Pointer, null,
                ("treatment", treatment.Ratios.Formula.Name), ("temperature", catalogue.Brines.AssumedCelsius));
        }

        var counted = celsius ?? catalogue.Brines.AssumedCelsius;
        if (counted > catalogue.Brines.ColdHoldingCelsius)
        {
            findings.Add(
                "brine-warm", at.At("temperature").Pointer, catalogue.Brines.ColdHoldingSourceId,
                ("treatment", treatment.Ratios.Formula.Name), ("temperature", counted), ("limit", catalogue.Brines.ColdHoldingCelsius));
        }

        var liquid = LiquidOf(treatment.Ratios);
        Brines.Dissolves(liquid, catalogue.Brines.Solution.SaturatedPercent(counted), counted, at.At(request.Formula is null ? "formulaId" : "formula"));
        var read = treatment with { LiquidCelsius = counted };
        return kind == FormulaKind.Soak ? read with { Soak = ReadSoak(request, liquid, counted, catalogue, at) } : read;
    }

    /// <summary>What a gram of a formula's liquid holds.</summary>
    public static Brine LiquidOf(FormulaRatios ratios) => Brine.Of(
        ratios.Lines.Select(l => l.Line.Ingredient).ToList(), ratios.Lines.Select(l => l.Share.Typical).ToArray());

    private static SoakTerms ReadSoak(TreatmentRequest request, Brine liquid, double celsius, Catalogue catalogue, Place at)
    {
        var minutes = Reader.Amount(request.Time, at.At("time"), BoundsOfBrines.Minutes, isRequired: false, Dimension.Time);
        double? grams = null;
        if (request.Liquid is { } authored
            && Reader.Authored(authored, at.At("liquid"), _ => BoundsOfBrines.Liquid, out var unit, Dimension.Mass, Dimension.Volume) is { } value)
        {
            grams = unit!.Dimension == Dimension.Mass
                ? unit.ToBase(value)
                : unit.ToBase(value) / liquid.MillilitresPerGram(catalogue.Brines, celsius);
        }

        if (request is { Liquid: not null, Dose: not null })
        {
            at.At("liquid").Fault("one-or-the-other", "Give either the liquid or the dose.");
        }

        if (!(liquid.WaterFraction > 0))
        {
            at.At(request.Formula is null ? "formulaId" : "formula").Fault("no-water", "Meat cannot soak in what has no water in it.");
        }

        return new SoakTerms(minutes, grams);
    }

    private static void RefuseOthers(TreatmentRequest request, FormulaKind kind, Place at)
    {
        var isLiquid = kind is FormulaKind.Injection or FormulaKind.Soak;
        Refuse(request.Temperature is not null && !isLiquid, "temperature", "Only an injection or a soak has a liquid whose temperature matters.");
        Refuse(request.Time is not null && kind != FormulaKind.Soak, "time", "Only a soak has a time.");
        Refuse(request.Liquid is not null && kind != FormulaKind.Soak, "liquid", "Only a soak has a bath of liquid.");
        Refuse(request.Retained is not null && kind == FormulaKind.Soak, "retained", "What a soak leaves in the meat is computed: leave retained out.");
        Refuse(request.Applications > 1 && kind == FormulaKind.Soak, "applications", "A soak is one bath: give each its own treatment.");

        void Refuse(bool isGiven, string member, string detail)
        {
            if (isGiven)
            {
                at.At(member).Fault("not-for-kind", detail);
            }
        }
    }
}
