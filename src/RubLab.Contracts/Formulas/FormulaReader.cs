using System.Globalization;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Curing;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Sauces;

namespace RubLab.Contracts.Formulas;

/// <summary>Reads a formula as sent into one of Core, noting every fault.</summary>
public static class FormulaReader
{
    /// <summary>The formula, or none when anything about it is at fault.</summary>
    /// <param name="request">The formula as sent.</param>
    /// <param name="catalogue">The reference data.</param>
    /// <param name="at">Where it stands.</param>
    /// <param name="isToShow">It is stored and only shown, so that its cook can mend it: a cure may declare what its name denies.</param>
    public static Formula? Read(FormulaRequest request, Catalogue catalogue, Place at, bool isToShow = false)
    {
        var before = at.Log.Count;
        var kind = Vocabulary.Kinds.Read(request.Kind, at.At("kind"));
        if (request.Kind is null)
        {
            Reader.Missing(at.At("kind"));
        }

        var ratioBase = Vocabulary.Bases.Read(request.Base, at.At("base"), RatioBase.Green).GetValueOrDefault();
        var name = Names.Name(request.Name, at.At("name"), isRequired: true);
        var dose = ReadDose(request.Dose, ratioBase, kind, at.At("dose"), out var doseUnit);
        var writtenFor = Reader.Amount(request.WrittenFor, at.At("writtenFor"), Bounds.MeatGrams, isRequired: false, Dimension.Mass);
        var draft = new FormulaDraft
        {
            Name = name,
            Kind = kind,
            Base = ratioBase,
            Dose = dose,
            DoseUnit = doseUnit,
            IsDoseUnreadable = request.Dose is not null && dose is null,
            WrittenForGrams = writtenFor,
            IsWrittenForUnreadable = request.WrittenFor is not null && writtenFor is null,
            WrittenForIs = Vocabulary.Weights.Read(request.WrittenForIs, at.At("writtenForIs"), WeightBasis.Green).GetValueOrDefault(),
            PercentLeft = Reader.Percent(request.ReducedTo, at.At("reducedTo"), Bounds.PercentLeft),
            Lines = ReadLines(request.Lines, kind, catalogue, at.At("lines"), isToShow),
        };
        if (request.WrittenForIs is not null && request.WrittenFor is null)
        {
            at.At("writtenForIs").Fault("needs-other", "writtenForIs says what writtenFor is; give writtenFor too.");
        }

        var formula = Formula.Create(draft, at);
        if (formula is { PercentLeft: < 100 })
        {
            CheckReduction(formula, catalogue, at.At("reducedTo").At("value"));
        }

        return at.Log.Count == before ? formula : null;
    }

    private static void CheckReduction(Formula formula, Catalogue catalogue, Place at)
    {
        var pot = Reduction.Of(FormulaRatios.Of(formula, catalogue, new FindingLog(catalogue), ""));
        if (!pot.CanReach(formula.PercentLeft))
        {
            var least = Math.Ceiling(pot.SolidsGramsPerKilogram) / 10;
            at.Fault(
                "reduced-below-solids",
                string.Create(CultureInfo.InvariantCulture, $"Only water boils off: {least:0.#} % of what goes into this pot is no water and stays."),
                ("value", formula.PercentLeft), ("lowest", least));
        }
    }

    private static double? ReadDose(QuantityRequest? dose, RatioBase ratioBase, FormulaKind? kind, Place at, out Unit? unit)
    {
        unit = null;
        if (dose is null)
        {
            return null;
        }

        var isArea = ratioBase == RatioBase.Area;
        var value = Reader.Authored(
            dose, at, _ => isArea ? Bounds.CoverageGrams : Bounds.DoseOf(kind), out unit,
            isArea ? Dimension.Coverage : Dimension.Ratio);
        return value;
    }

    /// <summary>The lines as far as they can be read.</summary>
    internal static List<FormulaLineDraft> ReadLines(
        IReadOnlyList<FormulaLineRequest?>? lines, FormulaKind? kind, Catalogue catalogue, Place at, bool isToShow = false)
    {
        var drafts = new List<FormulaLineDraft>();
        if (!Listed.Holds(lines, Formula.MostLines, "line", "lines", at))
        {
            return drafts;
        }

        for (var i = 0; i < lines.Count; i++)
        {
            if (lines[i] is { } line)
            {
                drafts.Add(ReadLine(line, kind, catalogue, at.At(i), isToShow));
            }
            else
            {
                Reader.Missing(at.At(i));
            }
        }

        return drafts;
    }

    private static FormulaLineDraft ReadLine(FormulaLineRequest line, FormulaKind? kind, Catalogue catalogue, Place at, bool isToShow)
    {
        var ingredient = Lookup.Ingredient(line.Ingredient, catalogue, at.At("ingredient"));
        var form = Lookup.Form(line.Form, ingredient, at.At("form"));
        var amountAt = at.At("amount");
        Unit? unit = null;
        double? amount = null;
        if (line.Amount is { } authored)
        {
            amount = Reader.Authored(
                authored, amountAt, u => Bounds.LineOf(u, kind), out unit,
                Dimension.Mass, Dimension.Volume, Dimension.Ratio, Dimension.PartsByMass, Dimension.PartsByVolume,
                Dimension.ShareOfLiquid, Dimension.ShareOfWater);
        }

        var salt = Reader.PercentBand(line.Salt, at.At("salt"), Bounds.Percent);
        var cure = isToShow ? null : ingredient;
        var nitrite = CureContents.Read(line.NitriteFraction, cure, cure?.NitriteGramsPer100Grams, AdditiveLoads.Nitrite, catalogue, at.At("nitriteFraction"));
        var nitrate = CureContents.Read(line.NitrateFraction, cure, cure?.NitrateGramsPer100Grams, AdditiveLoads.Nitrate, catalogue, at.At("nitrateFraction"));
        var counted = ingredient is { IsOfCures: true } ? ingredient.WithDeclaredCure(nitrite, nitrate, catalogue.Constants) : ingredient;
        return new FormulaLineDraft(
            salt is { } declared ? counted?.WithDeclaredSalt(declared, catalogue.Constants.SodiumInSodiumChlorideGramsPerGram) : counted,
            form, amount, unit, nitrite, nitrate, line.Amount is null)
        {
            DeclaredSaltPercent = salt,
            IsCureUnreadable = (line.NitriteFraction is not null && nitrite is null) || (line.NitrateFraction is not null && nitrate is null),
        };
    }
}
