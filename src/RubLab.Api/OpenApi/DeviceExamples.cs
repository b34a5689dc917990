using System.Text.Json;
using RubLab.Api.Callers;
using RubLab.Api.Endpoints;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Pairing;
using RubLab.Storage.Pairing;

namespace RubLab.Api.OpenApi;

/// <summary>Examples of pairing a phone.</summary>
internal static class DeviceExamples
{
    public const string Id = "019cebcd9f2a7d3c8f10a4b6c7d8e9f0";

    private const string Kitchen = "local";
    private const string Code = "7KXM4RTP";
    private const string Name = "Stove phone";

    private static readonly DateTimeOffset At = new(2026, 3, 14, 8, 30, 0, TimeSpan.Zero);
    private static readonly string[] Scopes = [Caller.ReadScope, Caller.WriteScope];

    public static IEnumerable<(string OperationId, OperationExample Example)> All()
    {
        var json = RubLabJson.Default;
        var open = new OpenCode(Kitchen, Id, Scopes, Name, At, At + PairingCodeStore.Life);
        var session = new DeviceSession(Kitchen, Id, Name, Scopes, At, At, At + DeviceSessionStore.Life);
        var current = JsonSerializer.SerializeToNode(PairingAnswers.Of(session, isCurrent: true, warning: null), json.SessionResponse);
        yield return ("createPairingCode", new OperationExample
        {
            Summary = "For the phone beside the stove",
            Body = JsonSerializer.SerializeToNode(new PairingCodeRequest { Scopes = Scopes, Name = Name }, json.PairingCodeRequest),
            Answer = JsonSerializer.SerializeToNode(PairingAnswers.Of(open, Code), json.PairingCodeResponse),
            Refusal = Problems.Of(Pairings.Check(new PairingCodeRequest { Scopes = ["cook"] }).Log),
        });
        yield return ("createSession", new OperationExample
        {
            Summary = "As typed on the phone",
            Body = JsonSerializer.SerializeToNode(new SessionRequest { Code = "7kxm 4rtp" }, json.SessionRequest),
            Answer = current,
            Refusal = SessionsEndpoints.CodeNotOpen(),
        });
        yield return ("getCurrentSession", new OperationExample { Summary = "The phone beside the stove", Answer = current });
        yield return ("listSessions", new OperationExample
        {
            Summary = "One phone, seen from the machine itself",
            Answer = JsonSerializer.SerializeToNode(
                new ListResponse<SessionResponse>([PairingAnswers.Of(session, isCurrent: false, warning: null)], null), json.ListResponseSessionResponse),
            Refusal = ReferenceExamples.BadPage("sessions"),
        });
    }
}
