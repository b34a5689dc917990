using RubLab.Core.Curing;
using RubLab.Core.Formulas;
using RubLab.Core.Ingredients;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Curing;

/// <summary>Mixes that carry something with a limit, for the tests.</summary>
internal static class Cures
{
    /// <summary>A cure whose pack declares so much nitrite, and nitrate.</summary>
    public static Ingredient Declared(double nitrite, double? nitrate = null) =>
        Given.Ingredient("curing-salt").WithDeclaredCure(nitrite, nitrate, Seed.Catalogue.Constants);

    /// <summary>A mix by parts of a carrier and something without any additive, put on or in at a dose.</summary>
    public static Treatment Mix(Ingredient carrier, double parts, double rest, double dose, FormulaKind kind = FormulaKind.Rub, params int[] lines) =>
        (Given.Draft(Given.Line(carrier, parts, "parts-by-mass"), Given.Line("sucrose", null, rest, "parts-by-mass")) with { Kind = kind })
            .Dosed(dose).Ratios().On(lines.Length == 0 ? [0] : lines);

    public static double Ppm(string additive, PileLine line, params Treatment[] treatments) =>
        AdditiveLoads.Of(Given.Pile(line), 0, treatments, isWeighed: true).SingleOrDefault(l => l.Additive == additive)?.PartsPerMillion.Typical ?? 0;

    public static LimitCheck Check(string limit, PileLine line, params Treatment[] treatments) => LimitChecks.Of(
        AdditiveLoads.Of(Given.Pile(line), 0, treatments, isWeighed: true), line, Seed.Catalogue).Single(c => c.Limit.Id == limit);

    public static IReadOnlyList<LimitCheck> Checks(PileLine line, params Treatment[] treatments) =>
        LimitChecks.Of(AdditiveLoads.Of(Given.Pile(line), 0, treatments, isWeighed: true), line, Seed.Catalogue);
}
