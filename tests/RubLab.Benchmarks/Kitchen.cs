using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;

namespace RubLab.Benchmarks;

/// <summary>The reference data as shipped, and a stack of three treatments with a pile for it.</summary>
public static class Kitchen
{
    public static Dictionary<string, string> Files() => SeedFiles.Names.ToDictionary(
        name => name, name => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "seed-data", name)));

    /// <summary>One line of so many pieces, each of its own weight, under three treatments.</summary>
    public static BatchSheetRequest Sheet(int pieces) => new()
    {
        Pile = [Pile(pieces)],
        Treatments = Formulas().Select(TreatmentRequest? (formula) => new TreatmentRequest
        {
            Formula = formula,
            Retained = new EstimateRequest { Low = 90, Typical = 95, High = 100, Unit = "%" },
        }).ToList(),
        WeighingStep = QuantityRequest.Of(1, "g"),
        Overage = QuantityRequest.Of(5, "%"),
        Portion = QuantityRequest.Of(170, "g"),
        Pieces = "all",
    };

    public static PileLineRequest Pile(int pieces) => new()
    {
        Id = "shoulders",
        Cut = "pork-shoulder",
        WeightIs = "purchase",
        TrimLoss = QuantityRequest.Of(8, "%"),
        Pieces = Enumerable.Range(0, pieces)
            .Select(PieceRequest? (i) => new PieceRequest { Weight = QuantityRequest.Of(3200 + (i * 37 % 900), "g") })
            .ToList(),
    };

    public static IReadOnlyList<FormulaRequest> Formulas() =>
    [
        new FormulaRequest
        {
            Name = "Dry brine",
            Kind = "dry-brine",
            Lines = [Line("salt", "table", 0.6, "%"), Line("sugar-brown", "packed", 0.3, "%")],
        },
        new FormulaRequest
        {
            Name = "Pork rub",
            Kind = "rub",
            Dose = QuantityRequest.Of(22, "g/kg"),
            Lines =
            [
                Line("salt", "table", 2, "parts-by-mass"), Line("black-pepper", "ground", 3, "parts-by-mass"),
                Line("paprika", "ground", 4, "parts-by-mass"), Line("garlic-powder", "powder", 1, "parts-by-mass"),
            ],
        },
        new FormulaRequest
        {
            Name = "Mop",
            Kind = "mop",
            Dose = QuantityRequest.Of(60, "g/kg"),
            Lines =
            [
                Line("vinegar-cider", "liquid", 480, "mL"), Line("apple-juice", "liquid", 240, "mL"),
                Line("salt", "table", 1, "tbsp"),
            ],
        },
    ];

    private static FormulaLineRequest Line(string ingredient, string form, double value, string unit) =>
        new() { Ingredient = ingredient, Form = form, Amount = QuantityRequest.Of(value, unit) };
}
