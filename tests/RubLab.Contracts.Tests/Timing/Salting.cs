using System.Text.Json;
using System.Text.Json.Nodes;
using RubLab.Contracts.Json;
using RubLab.Contracts.Timing;
using RubLab.Core.Faults;

namespace RubLab.Contracts.Tests.Timing;

/// <summary>Questions on salting, edited by pointer and computed.</summary>
internal static class Salting
{
    /// <summary>50 mm from both faces at 3e-10 m2/s: the case worked on the science page.</summary>
    public const string Slab =
        """
        {"method":"dry-brine","shape":"slab","thickness":{"value":50,"unit":"mm"},"facesTreated":2,"species":"pork","diffusivity":{"value":3e-10,"unit":"m2/s"},
         "stages":[{"temperature":{"value":5,"unit":"C"},"time":{"value":24,"unit":"h"}}]}
        """;

    public const string Pork =
        """
        {"method":"dry-brine","shape":"slab","thickness":{"value":50,"unit":"mm"},"facesTreated":2,"species":"pork",
         "stages":[{"temperature":{"value":5,"unit":"C"},"time":{"value":12,"unit":"h"}}]}
        """;

    public const string Shoulder =
        """
        {"method":"soak","cut":"pork-shoulder","weight":{"value":3.4,"unit":"kg"},"liquidRatio":1.5,
         "stages":[{"temperature":{"value":38,"unit":"F"},"time":{"value":2,"unit":"d"}},{"temperature":{"value":90,"unit":"C"},"time":{"value":30,"unit":"min"}}]}
        """;

    public static SaltingAnswer Solved(string body, string edits = "")
    {
        var result = Compute(body, edits);
        Assert.True(result.IsGood, string.Join('\n', result.Log.Faults.Select(f => $"{f.Pointer} {f.Code} {f.Detail}")));
        return result.Value;
    }

    public static SaltingTimesResponse Answer(string body, string edits = "") => Solved(body, edits).Response;

    public static JsonNode Json(string body, string edits = "") =>
        JsonNode.Parse(JsonSerializer.Serialize(Answer(body, edits), RubLabJson.Default.SaltingTimesResponse))!;

    public static Result<SaltingAnswer> Compute(string body, string edits = "") => SaltingAnswers.Compute(
        JsonSerializer.Deserialize(Document.Of(body).Edit(edits).Json, RubLabJson.Default.SaltingTimesRequest)!, Seed.Catalogue);

    public static IReadOnlyList<string> Faults(string body, string edits) => Document.Faults(Compute(body, edits).Log);
}
