using System.Text.Json;
using System.Text.Json.Serialization;
using RubLab.Contracts.Brining;
using RubLab.Contracts.Curing;
using RubLab.Contracts.Faults;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Salt;
using RubLab.Contracts.Sauces;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Serving;
using RubLab.Contracts.Shopping;
using RubLab.Contracts.Timing;
using RubLab.Contracts.Yields;

namespace RubLab.Page.Exports;

/// <summary>What the page's script gives, read as strictly as the API reads it, and the errors it gets.</summary>
/// <remarks>Only what the page calls, so that a visit does not download how to read and write the rest of the API.</remarks>
[JsonSourceGenerationOptions(
    GenerationMode = JsonSourceGenerationMode.Metadata,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    AllowDuplicateProperties = false,
    NumberHandling = JsonNumberHandling.Strict,
    MaxDepth = 32)]
[JsonSerializable(typeof(FormulaRequest))]
[JsonSerializable(typeof(FormulaChangeRequest))]
[JsonSerializable(typeof(OwnDensityRequest))]
[JsonSerializable(typeof(KeptDensity[]))]
[JsonSerializable(typeof(OwnYieldRequest))]
[JsonSerializable(typeof(KeptYield[]))]
[JsonSerializable(typeof(BatchSheetRequest))]
[JsonSerializable(typeof(SaltCheckRequest))]
[JsonSerializable(typeof(BrineRequest))]
[JsonSerializable(typeof(CureRequest))]
[JsonSerializable(typeof(SauceRequest))]
[JsonSerializable(typeof(SaltingTimesRequest))]
[JsonSerializable(typeof(ConversionsRequest))]
[JsonSerializable(typeof(PurchasePlanRequest))]
[JsonSerializable(typeof(PortionCountRequest))]
[JsonSerializable(typeof(ShoppingListRequest))]
[JsonSerializable(typeof(Dictionary<string, JsonElement>))]
[JsonSerializable(typeof(IReadOnlyList<ErrorResponse>))]
[JsonSerializable(typeof(double))]
[JsonSerializable(typeof(string[]))]
internal sealed partial class RequestJson : JsonSerializerContext
{
    private static RequestJson? _ofKept;

    /// <summary>For what the page kept from the API: an answer holds more than was authored, and the rest is passed over.</summary>
    public static RequestJson OfKept => _ofKept ??= new(new JsonSerializerOptions(Default.Options) { UnmappedMemberHandling = JsonUnmappedMemberHandling.Skip });
}
