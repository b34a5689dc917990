using System.Text.Json.Serialization;
using RubLab.Contracts.Brining;
using RubLab.Contracts.Curing;
using RubLab.Contracts.Faults;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Pairing;
using RubLab.Contracts.Reference;
using RubLab.Contracts.Salt;
using RubLab.Contracts.Sauces;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Service;
using RubLab.Contracts.Serving;
using RubLab.Contracts.Shopping;
using RubLab.Contracts.Timing;
using RubLab.Contracts.Yields;

namespace RubLab.Contracts.Json;

/// <summary>The JSON of the wire, generated at build time. Strict: unknown and duplicate members are refused.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    AllowDuplicateProperties = false,
    NumberHandling = JsonNumberHandling.Strict,
    MaxDepth = 32)]
[JsonSerializable(typeof(Problem))]
[JsonSerializable(typeof(FormulaRequest))]
[JsonSerializable(typeof(FormulaResponse))]
[JsonSerializable(typeof(ListResponse<FormulaSummary>))]
[JsonSerializable(typeof(ListResponse<RevisionSummary>))]
[JsonSerializable(typeof(FormulaChangeRequest))]
[JsonSerializable(typeof(FormulaChangeResponse))]
[JsonSerializable(typeof(OwnDensityRequest))]
[JsonSerializable(typeof(OwnDensityResponse))]
[JsonSerializable(typeof(ListResponse<OwnDensityResponse>))]
[JsonSerializable(typeof(OwnYieldRequest))]
[JsonSerializable(typeof(OwnYieldResponse))]
[JsonSerializable(typeof(ListResponse<OwnYieldResponse>))]
[JsonSerializable(typeof(PurchasePlanRequest))]
[JsonSerializable(typeof(PurchasePlanResponse))]
[JsonSerializable(typeof(PortionCountRequest))]
[JsonSerializable(typeof(PortionCountResponse))]
[JsonSerializable(typeof(ShoppingListRequest))]
[JsonSerializable(typeof(ShoppingListResponse))]
[JsonSerializable(typeof(BatchSheetRequest))]
[JsonSerializable(typeof(BatchSheetResponse))]
[JsonSerializable(typeof(SaltCheckRequest))]
[JsonSerializable(typeof(SaltCheckResponse))]
[JsonSerializable(typeof(SauceRequest))]
[JsonSerializable(typeof(SauceResponse))]
[JsonSerializable(typeof(CureRequest))]
[JsonSerializable(typeof(CureResponse))]
[JsonSerializable(typeof(BrineRequest))]
[JsonSerializable(typeof(BrineResponse))]
[JsonSerializable(typeof(SaltingTimesRequest))]
[JsonSerializable(typeof(SaltingTimesResponse))]
[JsonSerializable(typeof(ConversionItemRequest))]
[JsonSerializable(typeof(ConversionResponse))]
[JsonSerializable(typeof(ConversionsRequest))]
[JsonSerializable(typeof(ConversionsResponse))]
[JsonSerializable(typeof(ListResponse<UnitResponse>))]
[JsonSerializable(typeof(ListResponse<SourceResponse>))]
[JsonSerializable(typeof(SourceResponse))]
[JsonSerializable(typeof(ListResponse<IngredientSummary>))]
[JsonSerializable(typeof(IngredientResponse))]
[JsonSerializable(typeof(ListResponse<CutSummary>))]
[JsonSerializable(typeof(CutResponse))]
[JsonSerializable(typeof(ChangesResponse))]
[JsonSerializable(typeof(PairingCodeRequest))]
[JsonSerializable(typeof(PairingCodeResponse))]
[JsonSerializable(typeof(SessionRequest))]
[JsonSerializable(typeof(SessionResponse))]
[JsonSerializable(typeof(ListResponse<SessionResponse>))]
[JsonSerializable(typeof(HealthResponse))]
[JsonSerializable(typeof(double))]
[JsonSerializable(typeof(string[]))]
public sealed partial class RubLabJson : JsonSerializerContext;
