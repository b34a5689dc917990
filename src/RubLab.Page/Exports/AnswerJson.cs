using System.Text.Json.Serialization;
using RubLab.Contracts.Brining;
using RubLab.Contracts.Curing;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Reference;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Salt;
using RubLab.Contracts.Sauces;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Serving;
using RubLab.Contracts.Shopping;
using RubLab.Contracts.Timing;
using RubLab.Contracts.Yields;

namespace RubLab.Page.Exports;

/// <summary>What the page's script is given: the API's answers, written and never read, which takes a third of the code.</summary>
[JsonSourceGenerationOptions(
    GenerationMode = JsonSourceGenerationMode.Serialization,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(FormulaResponse))]
[JsonSerializable(typeof(FormulaChangeResponse))]
[JsonSerializable(typeof(OwnDensityResponse))]
[JsonSerializable(typeof(OwnYieldResponse))]
[JsonSerializable(typeof(BatchSheetResponse))]
[JsonSerializable(typeof(SaltCheckResponse))]
[JsonSerializable(typeof(BrineResponse))]
[JsonSerializable(typeof(CureResponse))]
[JsonSerializable(typeof(SauceResponse))]
[JsonSerializable(typeof(SaltingTimesResponse))]
[JsonSerializable(typeof(IReadOnlyList<CautionResponse>))]
[JsonSerializable(typeof(ConversionsResponse))]
[JsonSerializable(typeof(PurchasePlanResponse))]
[JsonSerializable(typeof(PortionCountResponse))]
[JsonSerializable(typeof(ShoppingListResponse))]
[JsonSerializable(typeof(ListResponse<SourceResponse>))]
[JsonSerializable(typeof(ListResponse<IngredientSummary>))]
[JsonSerializable(typeof(IngredientResponse))]
[JsonSerializable(typeof(ListResponse<CutSummary>))]
[JsonSerializable(typeof(CutResponse))]
internal sealed partial class AnswerJson : JsonSerializerContext;
