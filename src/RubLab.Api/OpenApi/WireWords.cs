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
        ["PileLineRequest.weighedBackIs"] = Vocabulary.WeighedBack.All,
        ["BatchSheetRequest.pieces"] = Vocabulary.Listings.All,
        ["BatchSheetRequest.purpose"] = Vocabulary.Purposes.All,
        ["BatchSheetResponse.status"] = ["weighed", "planned"],
        ["CheckResponse.verdict"] = Vocabulary.Verdicts.All,
        ["CheckResponse.typicalVerdict"] = Vocabulary.Verdicts.All,
        ["FindingResponse.severity"] = Vocabulary.Severities.All,
        ["CheckResponse.confidence"] = Vocabulary.Confidences.All,
        ["DensityResponse.confidence"] = Vocabulary.Confidences.All,
        ["FigureResponse.basis"] = Vocabulary.YieldBases.All,
        ["FigureResponse.confidence"] = Vocabulary.Confidences.All,
        ["SourceResponse.confidence"] = Vocabulary.Confidences.All,
        ["UnitResponse.dimension"] = Vocabulary.Dimensions.All,
        ["ChangeResponse.action"] = ["put", "deleted"],
        ["ChangeResponse.noun"] = ["formula", "density", "yield"],
        ["FormulaChangeRequest.hold"] = Vocabulary.Holds.All,
        ["PairingCodeRequest.scopes"] = Vocabulary.Scopes.All,
        ["PairingCodeResponse.scopes"] = Vocabulary.Scopes.All,
        ["SessionResponse.scopes"] = Vocabulary.Scopes.All,
        ["AuthoredFormula.kind"] = Vocabulary.Kinds.All,
        ["AuthoredFormula.base"] = Vocabulary.Bases.All,
        ["AuthoredFormula.writtenForIs"] = Vocabulary.Weights.All,
        ["ClaimResponse.verdict"] = Vocabulary.Verdicts.All,
        ["ClaimResponse.confidence"] = Vocabulary.Confidences.All,
        ["BrineRequest.purpose"] = Vocabulary.Purposes.All,
        ["CureRequest.method"] = Vocabulary.CureMethods.All,
        ["CureResponse.method"] = Vocabulary.CureMethods.All,
        ["CureRequest.purpose"] = Vocabulary.Purposes.All,
        ["BrineRequest.kind"] = Vocabulary.Brines.All,
        ["BrineResponse.kind"] = Vocabulary.Brines.All,
        ["BrineRequest.shape"] = Vocabulary.SoakShapes.All,
        ["PurchasePlanRequest.buyFor"] = Vocabulary.PurchaseEnds.All,
        ["PurchasePlanResponse.buyFor"] = Vocabulary.PurchaseEnds.All,
        ["PurchasePlanRequest.boughtIn"] = Vocabulary.BoughtIn.All,
        ["MenuLineRequest.plannedBy"] = Vocabulary.PlannedBy.All,
        ["YieldUsedResponse.origin"] = Vocabulary.YieldOrigins.All,
        ["CountedFigure.confidence"] = Vocabulary.Confidences.All,
        ["OwnYieldFigure.confidence"] = Vocabulary.Confidences.All,
        ["OwnYieldFigure.weightIs"] = Vocabulary.Weights.All,
        ["CookRecordRequest.beforeIs"] = Vocabulary.Weights.All,
        ["CookRecordResponse.beforeIs"] = Vocabulary.Weights.All,
        ["PlannedPileLine.weightIs"] = Vocabulary.Weights.All,
        ["PortionLineResponse.weightIs"] = Vocabulary.Weights.All,
        ["SaltingTimesRequest.method"] = Vocabulary.SaltingMethods.All,
        ["SaltingTimesResponse.method"] = Vocabulary.SaltingMethods.All,
        ["SaltingTimesRequest.shape"] = Vocabulary.SaltedShapes.All,
        ["SaltingTimesResponse.shape"] = Vocabulary.SaltedShapes.All,
        ["SaltingTimesRequest.blockedFaces"] = Vocabulary.PieceDimensions.All,
        ["SaltingDiffusivityResponse.confidence"] = Vocabulary.Confidences.All,
        ["EstimateRequest.unit"] = ["%"],
        ["ConversionItemRequest.to"] = UnitTable.SymbolsOf(Dimension.Mass, Dimension.Volume),
    };

    public static IReadOnlyList<string>? Of(string schema, string member) => Words.GetValueOrDefault($"{schema}.{member}");
}
