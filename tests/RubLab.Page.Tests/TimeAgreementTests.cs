using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using RubLab.Page.Tests.Harness;

namespace RubLab.Page.Tests;

/// <summary>How far salt gets by the page and by the server.</summary>
[Collection(PublishedTests.Name)]
public sealed partial class TimeAgreementTests(Published published)
{
    private const int Seed = 20260301;
    private const int Requests = 60;

    // An exact answer is written in twelve digits, in whose last one a difference of 1e-12 may show as one up to 1e-11.
    private const double Noise = 1e-11;

    private static readonly string[] Methods = ["dry-brine", "soak", "salt-bed"];
    private static readonly string[] Shapes = ["slab", "cylinder", "brick"];
    private static readonly string[] Cuts = ["beef-brisket", "pork-shoulder", "pork-loin", "lamb-leg", "chicken-leg", "turkey-breast", "salmon-fillet"];

    [RequiresChromiumFact]
    public async Task Page_and_server_give_the_same_answer_to_sixty_pieces()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        var random = new Random(Seed);
        for (var i = 0; i < Requests; i++)
        {
            await Agreement.AssertAsync(bench, published.Server, "computeSalting", "v1/salting-times", RequestOf(random).ToJsonString(), NoiseAt);
        }
    }

    // What is given, summed or looked up is equal to the bit; the rest stands on roots, exponentials and cosines.
    private static double NoiseAt(string place) => Transcendental().IsMatch(place) ? Noise : 0;

    private static JsonObject RequestOf(Random random)
    {
        var method = Pick(random, Methods);
        var request = new JsonObject { ["method"] = method, ["stages"] = new JsonArray(Enumerable.Range(0, random.Next(1, 4)).Select(_ => (JsonNode)StageOf(random)).ToArray()) };
        if (random.Next(2) == 0)
        {
            request["cut"] = Pick(random, Cuts);
            request["weight"] = Quantity(Math.Round(0.3 + (random.NextDouble() * 5), 3), "kg");
        }
        else
        {
            var shape = Pick(random, Shapes);
            request["species"] = "pork";
            request["shape"] = shape;
            request["thickness"] = Quantity(Math.Round(1 + (random.NextDouble() * 4), 2), "in");
            if (shape == "brick")
            {
                (request["width"], request["length"]) = (Quantity(random.Next(8, 20), "cm"), Quantity(random.Next(20, 40), "cm"));
            }

            if (shape != "cylinder" && random.Next(2) == 0)
            {
                request["blockedFaces"] = new JsonArray("thickness");
            }

            if (random.Next(2) == 0)
            {
                request["diffusivity"] = Quantity(random.Next(100, 1000) / 1e12, "m2/s");
            }
        }

        if (method == "soak")
        {
            request["liquidRatio"] = Math.Round(0.3 + (random.NextDouble() * 4), 3);
        }

        return request;
    }

    private static JsonObject StageOf(Random random) => new()
    {
        ["time"] = Quantity(Math.Round(0.5 + (random.NextDouble() * 40), 2), "h"),
        ["temperature"] = random.Next(2) == 0 ? Quantity(random.Next(0, 90), "C") : Quantity(random.Next(33, 200), "F"),
    };

    private static JsonObject Quantity(double value, string unit) => new() { ["value"] = value, ["unit"] = unit };

    private static string Pick(Random random, string[] from) => from[random.Next(from.Length)];

    [GeneratedRegex("/(uptake|liquidStrength|depth|centreToMean|profile/[0-9]+/(relative|layer)|timeTo|thickness|width|length|reach)/")]
    private static partial Regex Transcendental();
}
