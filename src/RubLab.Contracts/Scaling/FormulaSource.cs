using RubLab.Contracts.Formulas;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;

namespace RubLab.Contracts.Scaling;

/// <summary>The formula a request stands on: given in it, or stored and named by id.</summary>
internal static class FormulaSource
{
    public static Formula? Read(
        TreatmentRequest treatment, Catalogue catalogue, FormulaLookup formulas, Place at, out Place formulaAt, out bool isInline)
    {
        isInline = treatment.Formula is not null;
        formulaAt = at.At(isInline ? "formula" : "formulaId");
        if (treatment.Formula is null == treatment.FormulaId is null)
        {
            at.Fault("one-or-the-other", "Give exactly one of formula and formulaId.");
        }

        if (treatment.Formula is { } inline)
        {
            if (treatment is { Revision: not null, FormulaId: null })
            {
                at.At("revision").Fault("needs-other", "revision belongs to formulaId.");
            }

            return FormulaReader.Read(inline, catalogue, formulaAt);
        }

        if (treatment.FormulaId is null || Names.Id(treatment.FormulaId, formulaAt) is not { } id)
        {
            return null;
        }

        if (formulas(id, treatment.Revision) is not { } stored)
        {
            var which = treatment.Revision is { } revision ? $"no revision {revision} of formula '{id}'" : $"no formula '{id}'";
            formulaAt.Fault("unknown-formula", $"There is {which} in this kitchen.", ("value", id));
            return null;
        }

        // It was sound when it was stored; should a later edition find fault with it, the sender can only name it.
        var own = new FaultLog();
        var formula = FormulaReader.Read(stored, catalogue, own.Root);
        if (formula is null)
        {
            formulaAt.Fault("formula-not-sound", $"The stored formula '{id}' is not sound: {own.Faults[0].Detail}", ("value", id));
        }

        return formula;
    }
}
