using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Formulas;

/// <summary>Reads a formula as sent into one of Core, noting every fault.</summary>
public static class FormulaReader
{
    /// <summary>The formula, or none when anything about it is at fault.</summary>
    public static Formula? Read(FormulaRequest request, Catalogue catalogue, Place at)
    {
        var before = at.Log.Count;
        var kind = Vocabulary.Kinds.Read(request.Kind, at.At("kind"));
        if (request.Kind is null)
        {
            Reader.Missing(at.At("kind"));
        }
        else if (kind is FormulaKind.Injection or FormulaKind.Soak)
        {
            at.At("kind").Fault(
                "kind-not-offered", $"A formula of kind {request.Kind} is not computed by this version.", ("value", request.Kind));
        }

        var ratioBase = Vocabulary.Bases.Read(request.Base, at.At("base"), RatioBase.Green).GetValueOrDefault();
        var name = Names.Name(request.Name, at.At("name"), isRequired: true);
        var dose = ReadDose(request.Dose, ratioBase, at.At("dose"), out var doseUnit);
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
            Lines = ReadLines(request.Lines, catalogue, at.At("lines")),
        };
        if (request.WrittenForIs is not null && request.WrittenFor is null)
        {
            at.At("writtenForIs").Fault("needs-other", "writtenForIs says what writtenFor is; give writtenFor too.");
        }

        var formula = Formula.Create(draft, at);
        return at.Log.Count == before ? formula : null;
    }

    private static double? ReadDose(QuantityRequest? dose, RatioBase ratioBase, Place at, out Unit? unit)
    {
        unit = null;
        if (dose is null)
        {
            return null;
        }

        var isArea = ratioBase == RatioBase.Area;
        var value = Reader.Authored(
            dose, at, _ => isArea ? Bounds.CoverageGrams : Bounds.DoseGramsPerKilogram, out unit,
            isArea ? Dimension.Coverage : Dimension.Ratio);
        return value;
    }

    private static List<FormulaLineDraft> ReadLines(IReadOnlyList<FormulaLineRequest?>? lines, Catalogue catalogue, Place at)
    {
        var drafts = new List<FormulaLineDraft>();
        if (lines is null || lines.Count == 0)
        {
            at.Fault("required", "A formula has at least one line.");
            return drafts;
        }

        if (lines.Count > Formula.MostLines)
        {
            at.Fault(
                "too-many", $"A formula has at most {Formula.MostLines} lines; this has {lines.Count}.",
                ("most", (double)Formula.MostLines), ("count", (double)lines.Count));
            return drafts;
        }

        for (var i = 0; i < lines.Count; i++)
        {
            if (lines[i] is { } line)
            {
                drafts.Add(ReadLine(line, catalogue, at.At(i)));
            }
            else
            {
                Reader.Missing(at.At(i));
            }
        }

        return drafts;
    }

    private static FormulaLineDraft ReadLine(FormulaLineRequest line, Catalogue catalogue, Place at)
    {
        var ingredient = Lookup.Ingredient(line.Ingredient, catalogue, at.At("ingredient"));
        var form = Lookup.Form(line.Form, ingredient, at.At("form"));
        var amountAt = at.At("amount");
        if (line.Amount is null)
        {
            Reader.Missing(amountAt);
        }

        Unit? unit = null;
        double? amount = null;
        if (line.Amount is { } authored)
        {
            amount = Reader.Authored(
                authored, amountAt, u => u.Dimension == Dimension.Ratio ? Bounds.LineRatio : Bounds.CardAmount, out unit,
                Dimension.Mass, Dimension.Volume, Dimension.Ratio, Dimension.PartsByMass, Dimension.PartsByVolume);
        }

        // The load of a cure has legal limits that this version does not compute: better none than an unchecked one.
        if (ingredient is { IsCure: true })
        {
            at.At("ingredient").Fault("cure-not-offered", $"{ingredient.Name} carries nitrite or nitrate, whose load this version does not check.");
        }

        return new FormulaLineDraft(
            ingredient, form, amount, unit,
            line.NitriteFraction is { } nitrite ? Reader.Within(nitrite, Bounds.Fraction, at.At("nitriteFraction")) : null,
            line.NitrateFraction is { } nitrate ? Reader.Within(nitrate, Bounds.Fraction, at.At("nitrateFraction")) : null);
    }
}
