using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Timing;

namespace RubLab.Client.Tests;

/// <summary>What Lockside Kitchen sends.</summary>
internal static class Requests
{
    public static FormulaRequest Rub(double dose = 22, string name = "Lockside pork rub") => new()
    {
        Name = name,
        Kind = "rub",
        Dose = QuantityRequest.Of(dose, "g/kg"),
        Lines =
        [
            new() { Ingredient = "salt", Form = "table", Amount = QuantityRequest.Of(2, "parts-by-mass") },
            new() { Ingredient = "black-pepper", Form = "ground", Amount = QuantityRequest.Of(3, "parts-by-mass") },
        ],
    };

    /// <summary>Four shoulders of 3.6 kg, 8 % of it trimmed off, and a rub of 22 g/kg: 291 g on the meat.</summary>
    public static BatchSheetRequest Shoulders() => new()
    {
        Pile =
        [
            new()
            {
                Id = "shoulders", Cut = "pork-shoulder", Count = 4, WeightEach = QuantityRequest.Of(3.6, "kg"),
                WeightIs = "purchase", TrimLoss = QuantityRequest.Of(8, "%"),
            },
        ],
        Treatments = [new() { Formula = Rub(), Retained = new() { Low = 90, Typical = 95, High = 100, Unit = "%" } }],
        Overage = QuantityRequest.Of(5, "%"),
    };

    /// <summary>50 mm salted dry from both faces for a day, at 3e-10 m2/s.</summary>
    public static SaltingTimesRequest SaltedSlab() => new()
    {
        Method = "dry-brine",
        Shape = "slab",
        Thickness = QuantityRequest.Of(50, "mm"),
        Diffusivity = QuantityRequest.Of(3e-10, "m2/s"),
        Stages = [new() { Temperature = QuantityRequest.Of(4, "C"), Time = QuantityRequest.Of(1, "d") }],
    };
}
