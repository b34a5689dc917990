using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using RubLab.Contracts.Json;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Tests.Scaling;

namespace RubLab.Contracts.Tests.Faults;

/// <summary>Whatever is posted is refused by the reader, answered with faults, or answered with a sheet that adds up.</summary>
public class FuzzTests
{
    private const int Documents = 30_000;

    [Theory]
    [InlineData("first-sheet.json", 20260101)]
    [InlineData("full-sheet.json", 20260102)]
    public void A_mutated_sheet_is_refused_or_adds_up(string name, ulong seed)
    {
        var sound = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Documents", name));
        int refused = 0, faulty = 0, good = 0;
        var mutations = Mutation.Gen.Array[1, 4];
        var random = new PCG(1, seed);
        for (var i = 0; i < Documents; i++)
        {
            var document = JsonNode.Parse(sound)!;
            foreach (var mutation in mutations.Generate(random, null, out _))
            {
                mutation.Apply(document);
            }

            var json = document.ToJsonString();
            try
            {
                switch (Post(json))
                {
                    case null: refused++; break;
                    case false: faulty++; break;
                    case true: good++; break;
                }
            }
            catch (Exception e)
            {
                Assert.Fail($"seed {seed}, document {i}: {e.GetType().Name} {e.Message}\n{json}\n{e.StackTrace}");
            }
        }

        Assert.True(refused > Documents / 50 && faulty > Documents / 20 && good > Documents / 20, $"{refused} refused, {faulty} faulty, {good} good");
    }

    // Null for a document that cannot be read, false for one with faults, true for one with a sheet.
    private static bool? Post(string json)
    {
        BatchSheetRequest request;
        try
        {
            request = JsonSerializer.Deserialize(json, RubLabJson.Default.BatchSheetRequest)!;
        }
        catch (JsonException e)
        {
            Assert.StartsWith("$", e.Path, StringComparison.Ordinal);
            return null;
        }

        var result = Document.Of(json).Sheet();
        if (!result.IsGood)
        {
            Assert.NotEmpty(result.Log.Faults);
            Assert.All(result.Log.Faults, f => Assert.True(f.Pointer.Length == 0 || f.Pointer[0] == '/'));
            return false;
        }

        var answer = JsonNode.Parse(JsonSerializer.Serialize(result.Value, RubLabJson.Default.BatchSheetResponse))!;
        var step = (decimal)(request.WeighingStep?.Value ?? 1);
        foreach (var treatment in answer["treatments"]!.AsArray())
        {
            Sums.AreExact(treatment!, step, request.WeighingStep?.Unit ?? "g");
        }

        Bands(answer);
        return true;
    }

    private static void Bands(JsonNode? node)
    {
        if (node is JsonArray list)
        {
            foreach (var item in list)
            {
                Bands(item);
            }
        }
        else if (node is JsonObject members)
        {
            if (members.ContainsKey("low") && members.ContainsKey("typical"))
            {
                Assert.True((double)members["low"]! <= (double)members["typical"]!);
                Assert.True((double)members["typical"]! <= (double)members["high"]!);
            }

            foreach (var member in members)
            {
                Bands(member.Value);
            }
        }
    }
}
