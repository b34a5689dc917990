using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Json;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Salt;
using RubLab.Contracts.Sauces;
using RubLab.Contracts.Scaling;

namespace RubLab.Api.OpenApi;

/// <summary>What Lockside Kitchen posts, read by the API's own reader.</summary>
internal static class ExampleBodies
{
    public static FormulaRequest Rub() => Read(RubLabJson.Default.FormulaRequest, """
        { "name": "Lockside pork rub", "kind": "rub", "dose": { "value": 22, "unit": "g/kg" },
          "lines": [ { "ingredient": "salt", "form": "table", "amount": { "value": 2, "unit": "parts-by-mass" } },
                     { "ingredient": "black-pepper", "form": "ground", "amount": { "value": 3, "unit": "parts-by-mass" } } ] }
        """);

    /// <summary>Parts without a dose, and a mistyped ingredient.</summary>
    public static FormulaRequest UnsoundRub() => Read(RubLabJson.Default.FormulaRequest, """
        { "name": "Lockside pork rub", "kind": "rub",
          "lines": [ { "ingredient": "sallt", "amount": { "value": 2, "unit": "parts-by-mass" } } ] }
        """);

    public static ConversionsRequest Card() => Read(RubLabJson.Default.ConversionsRequest, """
        { "items": [ { "ingredient": "paprika", "form": "ground", "amount": { "value": 0.25, "unit": "cup" }, "to": "g" },
                     { "ingredient": "black-pepper", "form": "smoked", "amount": { "value": 2, "unit": "tbsp" }, "to": "g" } ] }
        """);

    public static BatchSheetRequest Pile() => Read(RubLabJson.Default.BatchSheetRequest, """
        { "pile": [ { "id": "shoulders", "cut": "pork-shoulder", "count": 4, "weightEach": { "value": 3.6, "unit": "kg" }, "weightIs": "purchase", "trimLoss": { "value": 8, "unit": "%" } },
                    { "id": "legs", "cut": "chicken-leg", "pieces": [ { "weight": { "value": 310, "unit": "g" } }, { "weight": { "value": 298, "unit": "g" }, "label": "blue tag" } ], "weightIs": "green" } ],
          "treatments": [ { "formula": { "name": "Lockside pork rub", "kind": "rub", "dose": { "value": 22, "unit": "g/kg" },
                                         "lines": [ { "ingredient": "salt", "form": "table", "amount": { "value": 2, "unit": "parts-by-mass" } },
                                                    { "ingredient": "black-pepper", "form": "ground", "amount": { "value": 3, "unit": "parts-by-mass" } } ] },
                            "on": [ "shoulders" ], "retained": { "low": 90, "typical": 95, "high": 100, "unit": "%" } } ],
          "weighingStep": { "value": 1, "unit": "g" }, "overage": { "value": 5, "unit": "%" },
          "portion": { "value": 170, "unit": "g" }, "pieces": "all" }
        """);

    public static SaltCheckRequest Stack() => Read(RubLabJson.Default.SaltCheckRequest, """
        { "pile": [ { "cut": "pork-shoulder" } ],
          "treatments": [ { "formulaId": "lockside-pork-rub", "stage": "before", "retained": { "low": 85, "typical": 92, "high": 100, "unit": "%" } },
                          { "formulaId": "lockside-lock-gate-mop", "stage": "during", "retained": { "low": 20, "typical": 40, "high": 70, "unit": "%" } } ],
          "portion": { "value": 170, "unit": "g" } }
        """);

    /// <summary>A cut that is not known, a trim loss on trimmed meat, a formula that is not there.</summary>
    public static BatchSheetRequest UnsoundPile() => Read(RubLabJson.Default.BatchSheetRequest, """
        { "pile": [ { "cut": "pork-shouder", "count": 4, "weightEach": { "value": 3.6, "unit": "kg" }, "trimLoss": { "value": 8, "unit": "%" } } ],
          "treatments": [ { "formulaId": "lockside-new-rub" } ] }
        """);

    public static SaltCheckRequest UnsoundStack() => Read(RubLabJson.Default.SaltCheckRequest, """
        { "pile": [ { "cut": "pork-shoulder", "cookYield": { "low": 70, "typical": 60, "high": 80, "unit": "%" } } ],
          "treatments": [ { "formulaId": "lockside-pork-rub", "stage": "overnight" } ] }
        """);

    public static SauceRequest Sauce() => Read(RubLabJson.Default.SauceRequest, """
        { "formula": { "name": "Lockside towpath glaze", "kind": "sauce", "reducedTo": { "value": 70, "unit": "%" },
                       "lines": [ { "ingredient": "vinegar-cider", "amount": { "value": 400, "unit": "g" } },
                                  { "ingredient": "cooking-juices", "amount": { "value": 500, "unit": "g" }, "salt": { "low": 0.9, "typical": 1.1, "high": 1.4, "unit": "%" } },
                                  { "ingredient": "salt", "form": "table", "amount": { "value": 8, "unit": "g" } } ] },
          "make": { "value": 1.5, "unit": "kg" }, "portion": { "value": 30, "unit": "g" } }
        """);

    /// <summary>Boiled down below what is no water, and a portion in hours.</summary>
    public static SauceRequest UnsoundSauce() => Sauce() with
    {
        Formula = Sauce().Formula! with { ReducedTo = QuantityRequest.Of(2, "%") },
        Portion = QuantityRequest.Of(30, "h"),
    };

    /// <summary>More pepper in the rub, the salt held.</summary>
    public static FormulaChangeRequest Change() => new() { Formula = Rub(), Line = 1, Amount = 4, Hold = "salt" };

    /// <summary>A line that is not there.</summary>
    public static FormulaChangeRequest UnsoundChange() => Change() with { Line = 2 };

    public static OwnDensityRequest Weighings() => Read(RubLabJson.Default.OwnDensityRequest, """
        { "weighings": [ { "volume": { "value": 0.25, "unit": "cup" }, "weight": { "value": 56, "unit": "g" } },
                         { "volume": { "value": 0.25, "unit": "cup" }, "weight": { "value": 58, "unit": "g" } } ] }
        """);

    /// <summary>Heavier than any powder.</summary>
    public static OwnDensityRequest UnsoundWeighings() => Read(RubLabJson.Default.OwnDensityRequest, """
        { "weighings": [ { "volume": { "value": 0.25, "unit": "cup" }, "weight": { "value": 530, "unit": "g" } } ] }
        """);

    private static T Read<T>(JsonTypeInfo<T> type, string json) => JsonSerializer.Deserialize(json, type)!;
}
