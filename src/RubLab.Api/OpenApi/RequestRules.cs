using System.Globalization;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Scaling;
using RubLab.Core.Formulas;
using RubLab.Core.Scaling;

namespace RubLab.Api.OpenApi;

/// <summary>What the readers of requests ask for and no type says: members always needed, sizes, ranges, defaults.</summary>
internal static class RequestRules
{
    private const string IdPattern = "^[A-Za-z0-9._-]{1,64}$";

    private static readonly Dictionary<string, string[]> Required = new(StringComparer.Ordinal)
    {
        ["QuantityRequest"] = ["value", "unit"],
        ["EstimateRequest"] = ["unit"],
        ["FormulaRequest"] = ["name", "kind", "lines"],
        ["FormulaLineRequest"] = ["ingredient", "amount"],
        ["ConversionsRequest"] = ["items"],
        ["ConversionItemRequest"] = ["ingredient", "amount", "to"],
        ["BatchSheetRequest"] = ["pile", "treatments"],
        ["SaltCheckRequest"] = ["pile", "treatments"],
        ["PileLineRequest"] = ["cut"],
        ["PieceRequest"] = ["weight"],
        ["ScaleRequest"] = ["step"],
        ["FormulaChangeRequest"] = ["line"],
        ["OwnDensityRequest"] = ["weighings"],
        ["WeighingRequest"] = ["volume", "weight"],
    };

    private static readonly Dictionary<string, Action<OpenApiSchema>> Constraints = new(StringComparer.Ordinal)
    {
        ["FormulaRequest.name"] = Text,
        ["FormulaRequest.base"] = s => s.Default = "green",
        ["FormulaRequest.lines"] = s => Items(s, Formula.MostLines),
        ["FormulaLineRequest.nitriteFraction"] = s => Within(s, Bounds.Fraction),
        ["FormulaLineRequest.nitrateFraction"] = s => Within(s, Bounds.Fraction),
        ["ConversionsRequest.items"] = s => Items(s, Conversions.MostItems),
        ["BatchSheetRequest.pile"] = s => Items(s, SheetRequest.MostPileLines),
        ["BatchSheetRequest.treatments"] = s => Items(s, SheetRequest.MostTreatments),
        ["BatchSheetRequest.pieces"] = s => s.Default = "all",
        ["BatchSheetRequest.purpose"] = s => s.Default = "sheet",
        ["SaltCheckRequest.pile"] = s => Items(s, 1),
        ["SaltCheckRequest.treatments"] = s => Items(s, SheetRequest.MostTreatments),
        ["PileLineRequest.id"] = s => s.Pattern = IdPattern,
        ["PileLineRequest.weightIs"] = s => s.Default = "green",
        ["PileLineRequest.count"] = s => Whole(s, 1, SheetRequest.MostPieceTreatments),
        ["PileLineRequest.pieces"] = s => Items(s, SheetRequest.MostPieceTreatments),
        ["PieceRequest.label"] = Text,
        ["PieceRequest.doseFactor"] = s => Within(s, Bounds.DoseFactor),
        ["TreatmentRequest.formulaId"] = s => s.Pattern = IdPattern,
        ["TreatmentRequest.revision"] = s => s.Minimum = "1",
        ["TreatmentRequest.on"] = s => Items(s, SheetRequest.MostPileLines),
        ["TreatmentRequest.applications"] = s => Whole(s, 1, TreatmentRequest.MostApplications, 1),
        ["EstimateRequest.value"] = s => Within(s, Bounds.Percent),
        ["EstimateRequest.low"] = s => Within(s, Bounds.Percent),
        ["EstimateRequest.typical"] = s => Within(s, Bounds.Percent),
        ["EstimateRequest.high"] = s => Within(s, Bounds.Percent),
    };

    public static ISet<string> RequiredOf(string schema) =>
        new HashSet<string>(Required.GetValueOrDefault(schema) ?? [], StringComparer.Ordinal);

    public static void Constrain(string schema, string member, OpenApiSchema value) => Constraints.GetValueOrDefault($"{schema}.{member}")?.Invoke(value);

    public static void Whole(OpenApiSchema schema, long lowest, long? highest, long? absent = null)
    {
        schema.Minimum = lowest.ToString(CultureInfo.InvariantCulture);
        schema.Maximum = highest?.ToString(CultureInfo.InvariantCulture);
        schema.Default = absent is { } value ? JsonValue.Create(value) : null;
    }

    public static void Within(OpenApiSchema schema, Bounds bounds)
    {
        schema.Minimum = bounds.Lowest.ToString(CultureInfo.InvariantCulture);
        schema.Maximum = bounds.Highest.ToString(CultureInfo.InvariantCulture);
    }

    // A name that is blank is refused too: some character is no space.
    private static void Text(OpenApiSchema schema)
    {
        schema.MaxLength = 200;
        schema.Pattern = @"\S";
    }

    private static void Items(OpenApiSchema schema, int most)
    {
        schema.MinItems = 1;
        schema.MaxItems = most;
    }
}
