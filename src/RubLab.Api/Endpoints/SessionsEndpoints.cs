using System.Globalization;
using RubLab.Api.Callers;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Pairing;
using RubLab.Core.Faults;
using RubLab.Storage;
using RubLab.Storage.Pairing;

namespace RubLab.Api.Endpoints;

internal static class SessionsEndpoints
{
    private const string ListName = "sessions";
    private const string UnnamedDevice = "Device";
    private const string CodePointer = "/code";
    private const string Current = "/v1/sessions/current";

    public static void MapSessions(this RouteGroupBuilder api)
    {
        var routes = api.MapGroup("/sessions").WithTags("Devices");
        routes.MapPost("/", Create)
            .Described(
                "createSession", "Pairs this device: a code for a cookie.",
                "Needs no key. The cookie is renewed while the device is used and ends after 90 days without. Five tries in five minutes from one address; "
                + "ten wrong ones from anywhere make every open code void.")
            .WithMetadata(new UnpairedMetadata())
            .Produces<SessionResponse>(StatusCodes.Status201Created)
            .RefusesUnpaired()
            .TakesBody();
        routes.MapGet("/", List)
            .Described("listSessions", "The paired devices, oldest first.", "Needs the scope pair.")
            .WithMetadata(new PairsMetadata())
            .Produces<ListResponse<SessionResponse>>()
            .Refuses(ProblemTypes.Unprocessable);
        routes.MapGet("/current", Get)
            .Described("getCurrentSession", "The paired device that asks.", "404 for whoever needs no session: the machine itself, and a key.")
            .Produces<SessionResponse>()
            .Refuses(ProblemTypes.NotFound);
        routes.MapDelete("/current", SignOut)
            .Described("endCurrentSession", "Unpairs the device that asks, and takes its cookie back.")
            .Produces(StatusCodes.Status204NoContent)
            .Refuses(ProblemTypes.NotFound);
        routes.MapDelete("/{id}", Delete)
            .Described("endSession", "Unpairs a device, at once.", "Needs the scope pair.")
            .WithMetadata(new PairsMetadata())
            .Produces(StatusCodes.Status204NoContent)
            .Refuses(ProblemTypes.NotFound);
    }

    public static IResult CodeNotOpen() => Problems.Of(
        ProblemTypes.Unprocessable, CodePointer, "code-not-open",
        "This code opens nothing: mistyped, used, too old, or void after too many wrong tries. Ask for a new one.");

    public static IResult NoSession() => Problems.Of(ProblemTypes.NotFound, "Whoever asks needs no session: it is the machine itself, or a key.");

    private static async Task<IResult> Create(HttpContext http, Database database, PairingCodes codes, PairingTries tries, SessionRequest request)
    {
        var check = Pairings.Check(request);
        if (!check.IsGood)
        {
            return Problems.Of(check.Log);
        }

        var address = http.Connection.RemoteIpAddress;
        if (tries.Take(address) is { } wait)
        {
            return RateLimits.Refusal(http, wait, "Codes were tried too often from here.");
        }

        var hash = codes.Hash(check.Value.Code);
        await using var work = await database.BeginAsync(Intent.Write, http.RequestAborted);
        if (await work.PairingCodes.RedeemAsync(hash, http.RequestAborted) is not { } open)
        {
            // Hanging up does not take a wrong try back.
            await work.CommitAsync(CancellationToken.None);
            return CodeNotOpen();
        }

        if (SessionCookie.Of(http.Request) is { } held && await work.DeviceSessions.FindAsync(held.Token, http.RequestAborted) is { } before)
        {
            // One device, paired again.
            await work.DeviceSessions.EndAsync(before.KitchenId, before.Id, http.RequestAborted);
        }

        var started = await work.DeviceSessions.StartAsync(
            open.KitchenId, check.Value.Name ?? open.DeviceName ?? UnnamedDevice, open.Scopes, http.RequestAborted);
        await work.CommitAsync(http.RequestAborted);
        tries.GiveBack(address);
        var cookie = new SessionCookie(started.PlainToken, SameOrigin.IsOverTls(http.Request));
        cookie.Give(http.Response);
        http.Response.Headers.Location = Current;
        http.Response.Headers.CacheControl = "no-store";
        return TypedResults.Json(
            PairingAnswers.Of(started.Session, isCurrent: true, PairingAnswers.WarningOf(http, cookie)),
            RubLabJson.Default.SessionResponse, statusCode: StatusCodes.Status201Created);
    }

    private static async Task<IResult> List(HttpContext http, Database database, Cursors cursors, [AsParameters] ListQuery query)
    {
        var log = new FaultLog();
        var (limit, position) = query.Read(cursors, ListName, log);
        if (!log.IsClean)
        {
            return Problems.Of(log);
        }

        var caller = Caller.Of(http);
        var warning = PairingAnswers.WarningOf(http, SessionCookie.Of(http.Request));
        await using var work = await database.BeginAsync(Intent.Read, http.RequestAborted);
        var after = position is [var ticks, var id]
            ? new DevicePosition(new DateTimeOffset(long.Parse(ticks, CultureInfo.InvariantCulture), TimeSpan.Zero), id)
            : null;
        var rows = await work.DeviceSessions.ListAsync(caller.KitchenId, limit + 1, after, http.RequestAborted);
        var page = rows.Take(limit).Select(r => PairingAnswers.Of(r, r.Id == caller.DeviceId, warning)).ToList();
        var next = rows.Count > limit
            ? cursors.Write(ListName, rows[limit - 1].CreatedAt.UtcTicks.ToString(CultureInfo.InvariantCulture), rows[limit - 1].Id)
            : null;
        return Answers.Computed(http, new ListResponse<SessionResponse>(page, next), RubLabJson.Default.ListResponseSessionResponse);
    }

    private static async Task<IResult> Get(HttpContext http, Devices devices)
    {
        // Asked for again: it may have been renewed just now.
        if (Caller.Of(http).DeviceId is null
            || SessionCookie.Of(http.Request) is not { } cookie
            || await devices.FindAsync(cookie, http.RequestAborted) is not { } session)
        {
            return NoSession();
        }

        return Answers.ComputedShort(
            http, PairingAnswers.Of(session, isCurrent: true, PairingAnswers.WarningOf(http, cookie)), RubLabJson.Default.SessionResponse);
    }

    private static async Task<IResult> SignOut(HttpContext http, Database database)
    {
        var caller = Caller.Of(http);
        if (caller.DeviceId is not { } id)
        {
            return NoSession();
        }

        await using var work = await database.BeginAsync(Intent.Write, http.RequestAborted);
        await work.DeviceSessions.EndAsync(caller.KitchenId, id, http.RequestAborted);
        await work.CommitAsync(http.RequestAborted);
        SessionCookie.Of(http.Request)?.Take(http.Response);
        return TypedResults.NoContent();
    }

    private static async Task<IResult> Delete(HttpContext http, Database database, string id)
    {
        await using var work = await database.BeginAsync(Intent.Write, http.RequestAborted);
        if (!await work.DeviceSessions.EndAsync(Caller.Of(http).KitchenId, id, http.RequestAborted))
        {
            return Problems.Of(ProblemTypes.NotFound);
        }

        await work.CommitAsync(http.RequestAborted);
        return TypedResults.NoContent();
    }
}
