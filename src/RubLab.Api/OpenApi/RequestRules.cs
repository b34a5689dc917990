using System.Globalization;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using RubLab.Contracts.Brining;
using RubLab.Contracts.Curing;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Shopping;
using RubLab.Contracts.Timing;
using RubLab.Contracts.Yields;
using RubLab.Core.Formulas;
using RubLab.Core.Scaling;
using RubLab.Core.Serving;

namespace RubLab.Api.OpenApi;

/// <summary>What the readers of requests ask for and no type says: members always needed, sizes, ranges, defaults.</summary>
internal static class RequestRules
{
    private const string CurrencyPattern = "^[A-Z]{3}$";
    private const string IdPattern = "^[A-Za-z0-9._-]{1,64}$";

    private static readonly Dictionary<string, string[]> Required = new(StringComparer.Ordinal)
    {
        ["QuantityRequest"] = ["value", "unit"],
        ["EstimateRequest"] = ["unit"],
        ["FormulaRequest"] = ["name", "kind", "lines"],
        ["FormulaLineRequest"] = ["ingredient"],
        ["ConversionsRequest"] = ["items"],
        ["ConversionItemRequest"] = ["ingredient", "amount", "to"],
        ["BatchSheetRequest"] = ["pile", "treatments"],
        ["SaltCheckRequest"] = ["pile", "treatments"],
        ["CureRequest"] = ["method", "cut", "meat", "lines"],
        ["CureTargetRequest"] = ["ingredient", "reached"],
        ["BrineRequest"] = ["kind", "meat", "lines"],
        ["BrineTargetRequest"] = ["ingredient", "reached"],
        ["SaltingTimesRequest"] = ["method", "stages"],
        ["SaltingStageRequest"] = ["temperature", "time"],
        ["WeighedBackRequest"] = ["green"],
        ["PileLineRequest"] = ["cut"],
        ["PieceRequest"] = ["weight"],
        ["ScaleRequest"] = ["step"],
        ["FormulaChangeRequest"] = ["line"],
        ["OwnDensityRequest"] = ["weighings"],
        ["WeighingRequest"] = ["volume", "weight"],
        ["SessionRequest"] = ["code"],
        ["OwnYieldRequest"] = ["records"],
        ["CookRecordRequest"] = ["date", "before", "after"],
        ["PurchasePlanRequest"] = ["guests", "menu"],
        ["GuestGroupRequest"] = ["count"],
        ["MenuLineRequest"] = ["cut"],
        ["MenuFormulaRequest"] = ["formulaId"],
        ["PriceRequest"] = ["amount", "currency"],
        ["MoneyRequest"] = ["amount", "currency"],
        ["PortionCountRequest"] = ["pile"],
        ["PackRequest"] = ["ingredient", "size"],
        ["StockRequest"] = ["ingredient", "amount"],
    };

    private static readonly Dictionary<string, Action<OpenApiSchema>> Constraints = new(StringComparer.Ordinal)
    {
        ["FormulaRequest.name"] = Text,
        ["FormulaRequest.base"] = s => s.Default = "green",
        ["SauceRequest.referenceAmounts"] = s => Items(s, 100),
        ["SauceRequest.formulaId"] = s => s.Pattern = IdPattern,
        ["SauceRequest.revision"] = s => s.Minimum = "1",
        ["FormulaRequest.lines"] = s => Items(s, Formula.MostLines),
        ["FormulaLineRequest.nitriteFraction"] = s => Within(s, Bounds.Fraction),
        ["FormulaLineRequest.nitrateFraction"] = s => Within(s, Bounds.Fraction),
        ["ConversionsRequest.items"] = s => Items(s, Conversions.MostItems),
        ["BatchSheetRequest.pile"] = s => Items(s, SheetRequest.MostPileLines),
        ["BatchSheetRequest.treatments"] = s => Items(s, SheetRequest.MostTreatments),
        ["BatchSheetRequest.pieces"] = s => s.Default = "all",
        ["BatchSheetRequest.purpose"] = s => s.Default = "sheet",
        ["BrineRequest.purpose"] = s => s.Default = "sheet",
        ["SaltCheckRequest.pile"] = s => Items(s, 1),
        ["SaltCheckRequest.treatments"] = s => Items(s, SheetRequest.MostTreatments),
        ["CureRequest.lines"] = s => Items(s, Formula.MostLines),
        ["CureRequest.targets"] = s => Items(s, CureRequest.MostTargets),
        ["CureRequest.purpose"] = s => s.Default = "sheet",
        ["BrineRequest.lines"] = s => Items(s, Formula.MostLines),
        ["BrineRequest.targets"] = s => Items(s, BrineRequest.MostTargets),
        ["BrineRequest.pieces"] = s => Whole(s, 1, BrineRequest.MostPieces, 1),
        ["BrineRequest.shape"] = s => s.Default = "slab",
        ["SaltingTimesRequest.facesTreated"] = s => Whole(s, 1, 2),
        ["SaltingTimesRequest.stages"] = s => Items(s, SaltingTimesRequest.MostStages),
        ["SaltingTimesRequest.blockedFaces"] = s => s.MaxItems = 6,
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
        ["PairingCodeRequest.scopes"] = s => Items(s, Vocabulary.Scopes.All.Count),
        ["PairingCodeRequest.name"] = Text,
        ["SessionRequest.name"] = Text,
        ["OwnYieldRequest.records"] = s => Items(s, OwnYieldRecords.MostRecords),
        ["CookRecordRequest.date"] = s => s.Format = "date",
        ["CookRecordRequest.method"] = s => s.Pattern = IdPattern,
        ["CookRecordRequest.beforeIs"] = s => s.Default = "green",
        ["PurchasePlanRequest.guests"] = s => Items(s, PlanRequest.MostGroups),
        ["PurchasePlanRequest.menu"] = s => Items(s, SheetRequest.MostPileLines),
        ["PurchasePlanRequest.buyFor"] = s => s.Default = "typical",
        ["PurchasePlanRequest.boughtIn"] = s => s.Default = "kg",
        ["GuestGroupRequest.appetite"] = s => s.Default = "ordinary",
        ["GuestGroupRequest.count"] = s => Whole(s, 1, PlanRequest.MostGuests),
        ["MenuLineRequest.id"] = s => s.Pattern = IdPattern,
        ["MenuLineRequest.method"] = s => s.Pattern = IdPattern,
        ["MenuFormulaRequest.formulaId"] = s => s.Pattern = IdPattern,
        ["MenuFormulaRequest.revision"] = s => s.Minimum = "1",
        ["PriceRequest.amount"] = Money,
        ["PriceRequest.currency"] = s => s.Pattern = CurrencyPattern,
        ["MoneyRequest.amount"] = Money,
        ["MoneyRequest.currency"] = s => s.Pattern = CurrencyPattern,
        ["PortionCountRequest.pile"] = s => Items(s, SheetRequest.MostPileLines),
        ["PortionCountRequest.appetite"] = s => s.Default = "ordinary",
        ["ShoppingListRequest.batchSheets"] = s => s.MaxItems = ShoppingLists.MostSheets,
        ["ShoppingListRequest.purchasePlans"] = s => s.MaxItems = ShoppingLists.MostPlans,
        ["ShoppingListRequest.packs"] = s => s.MaxItems = ShoppingLists.MostPacks,
        ["ShoppingListRequest.stock"] = s => s.MaxItems = ShoppingLists.MostPacks,
        ["ShoppingListRequest.portions"] = s => Whole(s, 1, PlanRequest.MostGuests),
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

    private static void Money(OpenApiSchema schema)
    {
        schema.Minimum = "0";
        schema.Maximum = MoneyReader.Most.ToString(CultureInfo.InvariantCulture);
    }

    private static void Items(OpenApiSchema schema, int most)
    {
        schema.MinItems = 1;
        schema.MaxItems = most;
    }
}
