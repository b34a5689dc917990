using RubLab.Contracts.Reading;
using RubLab.Core.Quantities;

namespace RubLab.Api.OpenApi;

/// <summary>The members that hold one of a few words, and the words.</summary>
internal static class WireWords
{
    private static readonly Dictionary<string, IReadOnlyList<string>> Words = new(StringComparer.Ordinal)
    {
        ["FormulaRequest.kind"] = Vocabulary.Kinds.All,
        ["FormulaResponse.kind"] = Vocabulary.Kinds.All,
        ["FormulaSummary.kind"] = Vocabulary.Kinds.All,
        ["RevisionSummary.kind"] = Vocabulary.Kinds.All,
        ["SheetTreatmentResponse.kind"] = Vocabulary.Kinds.All,
        ["FormulaRequest.base"] = Vocabulary.Bases.All,
        ["FormulaResponse.base"] = Vocabulary.Bases.All,
        // A card written for purchase weight is scaled to purchase weight.
        ["SheetTreatmentResponse.base"] = [.. Vocabulary.Bases.All, "purchase"],
        ["FormulaRequest.writtenForIs"] = Vocabulary.Weights.All,
        ["FormulaResponse.writtenForIs"] = Vocabulary.Weights.All,
        ["PileLineRequest.weightIs"] = Vocabulary.Weights.All,
        ["TreatmentRequest.stage"] = Vocabulary.Stages.All,
        ["SheetTreatmentResponse.stage"] = Vocabulary.Stages.All,
        ["BatchSheetRequest.pieces"] = Vocabulary.Listings.All,
        ["BatchSheetRequest.purpose"] = Vocabulary.Purposes.All,
        ["BatchSheetResponse.status"] = ["weighed", "planned"],
        ["CheckResponse.verdict"] = Vocabulary.Verdicts.All,
        ["CheckResponse.typicalVerdict"] = Vocabulary.Verdicts.All,
        ["FindingResponse.severity"] = Vocabulary.Severities.All,
        ["CheckResponse.confidence"] = Vocabulary.Confidences.All,
        ["DensityResponse.confidence"] = Vocabulary.Confidences.All,
        ["FigureResponse.confidence"] = Vocabulary.Confidences.All,
        ["SourceResponse.confidence"] = Vocabulary.Confidences.All,
        ["UnitResponse.dimension"] = Vocabulary.Dimensions.All,
        ["ChangeResponse.action"] = ["put", "deleted"],
        ["ChangeResponse.noun"] = ["formula", "density"],
        ["FormulaChangeRequest.hold"] = Vocabulary.Holds.All,
        ["AuthoredFormula.kind"] = Vocabulary.Kinds.All,
        ["AuthoredFormula.base"] = Vocabulary.Bases.All,
        ["AuthoredFormula.writtenForIs"] = Vocabulary.Weights.All,
        ["ClaimResponse.verdict"] = Vocabulary.Verdicts.All,
        ["ClaimResponse.confidence"] = Vocabulary.Confidences.All,
        ["EstimateRequest.unit"] = ["%"],
        ["ConversionItemRequest.to"] = UnitTable.SymbolsOf(Dimension.Mass, Dimension.Volume),
    };

    public static IReadOnlyList<string>? Of(string schema, string member) => Words.GetValueOrDefault($"{schema}.{member}");
}
