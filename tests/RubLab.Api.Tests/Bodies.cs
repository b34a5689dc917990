namespace RubLab.Api.Tests;

/// <summary>Sound bodies, one for each route that takes one.</summary>
internal static class Bodies
{
    public const string Formula = """
        {"name":"Lockside pork rub","kind":"rub","dose":{"value":22,"unit":"g/kg"},
         "lines":[{"ingredient":"salt","form":"table","amount":{"value":2,"unit":"parts-by-mass"}},
                  {"ingredient":"black-pepper","form":"ground","amount":{"value":3,"unit":"parts-by-mass"}}]}
        """;

    public const string Card = """
        {"name":"The old card","kind":"rub","writtenFor":{"value":12,"unit":"lb"},"writtenForIs":"purchase",
         "lines":[{"ingredient":"salt","form":"table","amount":{"value":3,"unit":"tbsp"}},
                  {"ingredient":"paprika","amount":{"value":0.25,"unit":"cup"}}]}
        """;

    /// <summary>The body printed in the contract.</summary>
    public const string Sheet = $$$"""
        {"pile":[{"id":"shoulders","cut":"pork-shoulder","count":4,"weightEach":{"value":3.6,"unit":"kg"},"weightIs":"purchase","trimLoss":{"value":8,"unit":"%"}},
                 {"id":"legs","cut":"chicken-leg","pieces":[{"weight":{"value":310,"unit":"g"}},{"weight":{"value":298,"unit":"g"},"label":"blue tag"}],"weightIs":"green"}],
         "treatments":[{"formula":{{{Formula}}},"on":["shoulders"],"retained":{"low":90,"typical":95,"high":100,"unit":"%"}}],
         "weighingStep":{"value":1,"unit":"g"},"overage":{"value":5,"unit":"%"},"portion":{"value":170,"unit":"g"},"pieces":"all"}
        """;

    public const string SaltCheck = $$$"""
        {"pile":[{"cut":"pork-shoulder","cookYield":{"value":65,"unit":"%"}}],
         "treatments":[{"formula":{{{Formula}}},"retained":{"low":90,"typical":95,"high":100,"unit":"%"}}],
         "portion":{"value":170,"unit":"g"}}
        """;

    /// <summary>A belly cured dry, solved for nitrite and salt.</summary>
    public const string Cure = """
        {"method":"dry","cut":"pork-belly","product":"bacon","meat":{"value":2,"unit":"kg"},"skin":{"value":5,"unit":"%"},"weighingStep":{"value":0.1,"unit":"g"},
         "cookYield":{"low":60,"typical":70,"high":80,"unit":"%"},"purpose":"sheet",
         "lines":[{"ingredient":"cure-6-25"},{"ingredient":"salt","form":"table"},{"ingredient":"sugar-brown","amount":{"value":10,"unit":"g/kg"}},{"ingredient":"sodium-erythorbate","amount":{"value":1,"unit":"g"}}],
         "targets":[{"ingredient":"cure-6-25","additive":"nitrite","reached":{"value":150,"unit":"ppm"}},{"ingredient":"salt","additive":"sodium-chloride","reached":{"value":2.5,"unit":"%"}}]}
        """;

    /// <summary>The body printed in the contract.</summary>
    public const string Brine = """
        {"kind":"injection","cut":"pork-shoulder","meat":{"value":6,"unit":"kg"},"dose":{"value":10,"unit":"%"},
         "retained":{"low":80,"typical":90,"high":100,"unit":"%"},"temperature":{"value":4,"unit":"C"},
         "lines":[{"ingredient":"water","amount":{"value":2,"unit":"kg"}},{"ingredient":"salt","form":"table","amount":{"value":150,"unit":"g"}}]}
        """;

    public const string Soak = """
        {"kind":"soak","cut":"chicken-leg","meat":{"value":5,"unit":"lb"},"pieces":8,"time":{"value":6,"unit":"h"},"temperature":{"value":38,"unit":"F"},
         "liquid":{"value":1,"unit":"gal"},"saltInMeat":{"value":1,"unit":"g/kg"},"vessel":{"value":8,"unit":"L"},"loss":{"value":5,"unit":"%"},"bowl":{"value":3,"unit":"kg"},
         "lines":[{"ingredient":"water"},{"ingredient":"sugar-brown","amount":{"value":2,"unit":"%-of-water"}},{"ingredient":"salt"}],
         "targets":[{"ingredient":"salt","reached":{"value":5,"unit":"g/kg"}}]}
        """;

    public const string Conversions = """
        {"items":[{"ingredient":"black-pepper","form":"ground","amount":{"value":2,"unit":"tbsp"},"to":"g"},
                  {"ingredient":"salt","amount":{"value":1,"unit":"lb"},"to":"g"}]}
        """;

    public const string Sauce = """
        {"formula":{"name":"Lockside towpath glaze","kind":"sauce","reducedTo":{"value":70,"unit":"%"},
           "lines":[{"ingredient":"vinegar-cider","amount":{"value":400,"unit":"g"}},
                    {"ingredient":"cooking-juices","amount":{"value":2,"unit":"cup"},"salt":{"low":0.9,"typical":1.1,"high":1.4,"unit":"%"}}]},
         "make":{"value":1.5,"unit":"kg"},"portion":{"value":2,"unit":"tbsp"},"referenceAmounts":["barbecue-sauce"]}
        """;

    public const string Plan = """
        {"guests":[{"appetite":"ordinary","count":40,"portion":{"value":170,"unit":"g"}},{"appetite":"small","count":10}],
         "menu":[{"id":"briskets","cut":"beef-brisket","share":{"value":60,"unit":"%"},"trimLoss":{"low":5,"typical":12,"high":20,"unit":"%"},
                  "price":{"amount":11.50,"currency":"EUR","per":{"value":1,"unit":"kg"}},
                  "formulas":[{"formulaId":"lockside-evening-salt-and-pepper","dose":{"value":15,"unit":"g/kg"},"retained":{"value":90,"unit":"%"}}]},
                 {"cut":"pork-boston-butt","share":{"value":40,"unit":"%"},"pieceWeight":{"value":3.5,"unit":"kg"},"method":"roasted",
                  "price":{"amount":21,"currency":"EUR"},"formulas":[{"formulaId":"lockside-pork-rub"}]}],
         "reserve":{"value":5,"unit":"%"},"buyFor":"typical","boughtIn":"kg"}
        """;

    public const string PortionCount = """
        {"pile":[{"cut":"beef-brisket","count":3,"weightEach":{"value":5.85,"unit":"kg"},"weightIs":"purchase"},
                 {"cut":"chicken-leg","count":12,"totalWeight":{"value":4,"unit":"kg"},"bone":{"value":25,"unit":"%"}}],
         "portion":{"value":174,"unit":"g"},"paid":{"amount":230.10,"currency":"EUR"}}
        """;

    public const string ShoppingList = $$$"""
        {"batchSheets":[{{{Sheet}}}],
         "purchasePlans":[{{{Plan}}}],
         "packs":[{"ingredient":"black-pepper","form":"ground","size":{"value":250,"unit":"g"},"price":{"amount":7.95,"currency":"EUR"}},
                  {"ingredient":"salt","form":"table","size":{"value":1,"unit":"kg"},"price":{"amount":0.89,"currency":"EUR"}}],
         "stock":[{"ingredient":"black-pepper","form":"ground","amount":{"value":0.25,"unit":"cup"}}],"portions":50}
        """;

    public const string Cooks = """
        {"records":[{"date":"2026-03-07","method":"smoked","before":{"value":5.2,"unit":"kg"},"after":{"value":3.2,"unit":"kg"}},
                    {"date":"2026-03-14","method":"smoked","before":{"value":6,"unit":"kg"},"beforeIs":"purchase","trimLoss":{"value":12,"unit":"%"},"after":{"value":3.2,"unit":"kg"}}]}
        """;

    public const string SaltingTimes = """
        {"method":"dry-brine","shape":"slab","thickness":{"value":50,"unit":"mm"},"facesTreated":2,"species":"pork","diffusivity":{"value":3e-10,"unit":"m2/s"},
         "stages":[{"temperature":{"value":4,"unit":"C"},"time":{"value":24,"unit":"h"}}]}
        """;

    /// <summary>All the other members.</summary>
    public const string SoakedBrick = """
        {"method":"soak","shape":"brick","cut":"pork-shoulder","weight":{"value":3.4,"unit":"kg"},"width":{"value":5,"unit":"in"},"facesTreated":1,"blockedFaces":["width","length"],
         "liquidRatio":1.5,"stages":[{"temperature":{"value":38,"unit":"F"},"time":{"value":2,"unit":"d"}},{"temperature":{"value":90,"unit":"C"},"time":{"value":30,"unit":"min"}}]}
        """;

    /// <summary>Every route that reads a body: method, path, a sound body, the name of a list in it.</summary>
    public static IReadOnlyDictionary<string, (HttpMethod Method, string Path, string Sound, string List)> ByRoute { get; } =
        new Dictionary<string, (HttpMethod, string, string, string)>
        {
            ["createFormula"] = (HttpMethod.Post, "/v1/formulas", Formula, "lines"),
            ["replaceFormula"] = (HttpMethod.Put, "/v1/formulas/lockside-pork-rub", Formula, "lines"),
            ["computeBatchSheet"] = (HttpMethod.Post, "/v1/batch-sheets", Sheet, "pile"),
            ["checkSalt"] = (HttpMethod.Post, "/v1/salt-checks", SaltCheck, "pile"),
            ["computeCure"] = (HttpMethod.Post, "/v1/cures", Cure, "lines"),
            ["computeBrine"] = (HttpMethod.Post, "/v1/brines", Brine, "lines"),
            ["planPurchase"] = (HttpMethod.Post, "/v1/purchase-plans", Plan, "menu"),
            ["countPortions"] = (HttpMethod.Post, "/v1/portion-counts", PortionCount, "pile"),
            ["makeShoppingList"] = (HttpMethod.Post, "/v1/shopping-lists", ShoppingList, "batchSheets"),
            ["putYield"] = (HttpMethod.Put, "/v1/yields/beef-brisket", Cooks, "records"),
            ["convertMany"] = (HttpMethod.Post, "/v1/conversions", Conversions, "items"),
        };

    /// <summary>Those, and the routes whose bodies hold no list of objects.</summary>
    public static IReadOnlyList<(HttpMethod Method, string Path, string Sound)> All { get; } =
        [.. ByRoute.Values.Select(route => (route.Method, route.Path, route.Sound)), (HttpMethod.Post, "/v1/sauces", Sauce), (HttpMethod.Post, "/v1/salting-times", SaltingTimes)];
}
