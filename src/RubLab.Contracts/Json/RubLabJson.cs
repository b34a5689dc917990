using System.Text.Json.Serialization;
using RubLab.Contracts.Faults;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Reference;
using RubLab.Contracts.Salt;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Service;

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
[JsonSerializable(typeof(BatchSheetRequest))]
[JsonSerializable(typeof(BatchSheetResponse))]
[JsonSerializable(typeof(SaltCheckRequest))]
[JsonSerializable(typeof(SaltCheckResponse))]
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
[JsonSerializable(typeof(HealthResponse))]
[JsonSerializable(typeof(double))]
[JsonSerializable(typeof(string[]))]
public sealed partial class RubLabJson : JsonSerializerContext;
