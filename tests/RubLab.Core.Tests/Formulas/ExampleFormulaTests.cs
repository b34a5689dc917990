using System.Text.Json;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;

namespace RubLab.Core.Tests.Formulas;

/// <summary>The example formulas shipped with the reference data are sound and resolve, each with its salt.</summary>
public sealed class ExampleFormulaTests
{
    private static readonly string[] Files = [.. Directory.GetFiles(Repository.PathOf("seed-data", "formulas"), "*.json")
        .Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    public static TheoryData<string> Names => new(Files);

    [Theory]
    [MemberData(nameof(Names))]
    public void An_example_formula_is_sound_and_resolves(string name)
    {
        var log = new FaultLog();
        var formula = Formula.Create(DraftOf(name), log.Root);
        Assert.True(log.IsClean, string.Join("; ", log.Faults.Select(f => $"{f.Pointer} {f.Code}")));

        var ratios = FormulaRatios.Of(formula!, Seed.Catalogue, new FindingLog(Seed.Catalogue), "/formula");

        Assert.Equal(ratios.DoseGramsPerKilogram, ratios.Lines.Sum(l => l.RatioGramsPerKilogram.Typical), 1e-9);
        Assert.Equal(1, ratios.Lines.Sum(l => l.Share.Typical), 1e-9);
        Assert.InRange(ratios.DoseGramsPerKilogram, 0.1, formula!.Kind == FormulaKind.Soak ? 5000 : 500);
        Assert.InRange(ratios.SaltSharePercent.Typical, 0, 100);
    }

    [Fact]
    public void There_is_an_example_of_every_kind() => Assert.Equal(
        Enum.GetValues<FormulaKind>(), Files.Select(file => DraftOf(file).Kind!.Value).Distinct().Order());

    [Fact]
    public void Names_are_the_examples_own() =>
        Assert.Equal(20, Files.Select(file => DraftOf(file).Name).Distinct(StringComparer.Ordinal).Count());

    private static FormulaDraft DraftOf(string name)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(Repository.PathOf("seed-data", "formulas", name + ".json")));
        var root = json.RootElement;
        var dose = Amount(root, "dose");
        var writtenFor = Amount(root, "writtenFor");
        return new FormulaDraft
        {
            Name = root.GetProperty("name").GetString(),
            Kind = Enum.Parse<FormulaKind>(root.GetProperty("kind").GetString()!.Replace("-", "", StringComparison.Ordinal), ignoreCase: true),
            Base = root.TryGetProperty("base", out var on) ? Enum.Parse<RatioBase>(on.GetString()!, ignoreCase: true) : RatioBase.Green,
            Dose = dose?.Value,
            DoseUnit = dose?.Unit,
            WrittenForGrams = writtenFor?.Unit.ToBase(writtenFor.Value.Value),
            WrittenForIs = root.TryGetProperty("writtenForIs", out var basis) ? Enum.Parse<WeightBasis>(basis.GetString()!, ignoreCase: true) : WeightBasis.Green,
            Lines = [.. root.GetProperty("lines").EnumerateArray().Select(LineOf)],
        };
    }

    private static FormulaLineDraft LineOf(JsonElement line)
    {
        var form = line.TryGetProperty("form", out var named) ? named.GetString() : null;
        var ingredient = line.GetProperty("ingredient").GetString()!;
        return Amount(line, "amount") is { } amount
            ? Given.Line(ingredient, form, amount.Value, amount.Unit.Symbol)
            : Given.Line(ingredient, form, 1, "g") with { Amount = null, Unit = null, IsAmountLeftOut = true };
    }

    private static (double Value, Unit Unit)? Amount(JsonElement of, string member) => of.TryGetProperty(member, out var amount)
        ? (amount.GetProperty("value").GetDouble(), UnitTable.Get(amount.GetProperty("unit").GetString()!))
        : null;
}
