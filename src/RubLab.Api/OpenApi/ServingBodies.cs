using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using RubLab.Contracts.Json;
using RubLab.Contracts.Serving;
using RubLab.Contracts.Shopping;
using RubLab.Contracts.Yields;

namespace RubLab.Api.OpenApi;

/// <summary>What Lockside Kitchen posts to plan a supper, read by the API's own reader.</summary>
internal static class ServingBodies
{
    public static PurchasePlanRequest Supper() => Read(RubLabJson.Default.PurchasePlanRequest, """
        { "guests": [ { "appetite": "ordinary", "count": 40 }, { "appetite": "small", "count": 10 } ],
          "menu": [ { "id": "briskets", "cut": "beef-brisket", "share": { "value": 60, "unit": "%" },
                      "price": { "amount": 11.50, "currency": "EUR", "per": { "value": 1, "unit": "kg" } },
                      "formulas": [ { "formulaId": "lockside-evening-salt-and-pepper" } ] },
                    { "id": "butts", "cut": "pork-boston-butt", "share": { "value": 40, "unit": "%" }, "pieceWeight": { "value": 3.5, "unit": "kg" },
                      "price": { "amount": 6.20, "currency": "EUR", "per": { "value": 1, "unit": "kg" } },
                      "formulas": [ { "formulaId": "lockside-pork-rub" } ] } ],
          "reserve": { "value": 5, "unit": "%" } }
        """);

    /// <summary>Nobody comes, the shares do not sum, and two currencies are named.</summary>
    public static PurchasePlanRequest UnsoundSupper() => Read(RubLabJson.Default.PurchasePlanRequest, """
        { "guests": [ { "count": 0 } ],
          "menu": [ { "cut": "beef-brisket", "share": { "value": 60, "unit": "%" }, "price": { "amount": 11.50, "currency": "EUR" } },
                    { "cut": "pork-boston-butt", "share": { "value": 30, "unit": "%" }, "price": { "amount": 6.20, "currency": "USD" } } ] }
        """);

    public static PortionCountRequest Pile() => Read(RubLabJson.Default.PortionCountRequest, """
        { "pile": [ { "cut": "beef-brisket", "count": 3, "weightEach": { "value": 5.85, "unit": "kg" }, "weightIs": "purchase" } ],
          "appetite": "ordinary", "paid": { "amount": 201.83, "currency": "EUR" } }
        """);

    /// <summary>A portion heavier than the meat.</summary>
    public static PortionCountRequest UnsoundPile() => Read(RubLabJson.Default.PortionCountRequest, """
        { "pile": [ { "cut": "chicken-leg", "count": 1, "weightEach": { "value": 310, "unit": "g" } } ], "portion": { "value": 1, "unit": "kg" } }
        """);

    public static ShoppingListRequest List() => Read(RubLabJson.Default.ShoppingListRequest, """
        { "batchSheets": [ { "pile": [ { "cut": "beef-brisket", "count": 3, "weightEach": { "value": 5.2, "unit": "kg" } } ],
                             "treatments": [ { "formulaId": "lockside-evening-salt-and-pepper" } ] },
                           { "pile": [ { "cut": "pork-boston-butt", "count": 2, "weightEach": { "value": 3.2, "unit": "kg" } } ],
                             "treatments": [ { "formulaId": "lockside-pork-rub" } ] } ],
          "packs": [ { "ingredient": "black-pepper", "form": "coarse", "size": { "value": 100, "unit": "g" }, "price": { "amount": 3.40, "currency": "EUR" } } ],
          "stock": [ { "ingredient": "black-pepper", "form": "coarse", "amount": { "value": 30, "unit": "g" } } ],
          "portions": 50 }
        """);

    /// <summary>A pack that holds nothing.</summary>
    public static ShoppingListRequest UnsoundList() => List() with
    {
        Packs = Read(RubLabJson.Default.ShoppingListRequest, """
            { "packs": [ { "ingredient": "black-pepper", "size": { "value": 0, "unit": "g" }, "price": { "amount": -1, "currency": "EUR" } } ] }
            """).Packs,
    };

    public static OwnYieldRequest Cooks() => Read(RubLabJson.Default.OwnYieldRequest, """
        { "records": [ { "date": "2026-03-07", "method": "smoked", "before": { "value": 5.2, "unit": "kg" }, "after": { "value": 3.1, "unit": "kg" } },
                       { "date": "2026-03-14", "method": "smoked", "before": { "value": 4.9, "unit": "kg" }, "after": { "value": 2.95, "unit": "kg" } } ] }
        """);

    /// <summary>More came out than went in.</summary>
    public static OwnYieldRequest UnsoundCooks() => Read(RubLabJson.Default.OwnYieldRequest, """
        { "records": [ { "date": "14 March", "before": { "value": 5.2, "unit": "kg" }, "after": { "value": 5.3, "unit": "kg" } } ] }
        """);

    private static T Read<T>(JsonTypeInfo<T> type, string json) => JsonSerializer.Deserialize(json, type)!;
}
