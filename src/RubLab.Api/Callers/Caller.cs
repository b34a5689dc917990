namespace RubLab.Api.Callers;

/// <summary>Who a request speaks for.</summary>
/// <param name="KitchenId">The kitchen.</param>
/// <param name="Credential">The key or device, for counting its requests; none on the loopback kitchen.</param>
/// <param name="Scopes">What it may do.</param>
/// <param name="DeviceId">The paired device; none for a key and on the loopback kitchen.</param>
public sealed record Caller(string KitchenId, string? Credential, IReadOnlyList<string> Scopes, string? DeviceId = null)
{
    public const string ReadScope = "read";
    public const string WriteScope = "write";
    public const string PairScope = "pair";

    /// <summary>All there is to be allowed.</summary>
    public static IReadOnlyList<string> AllScopes { get; } = [ReadScope, WriteScope, PairScope];

    /// <summary>The caller that <see cref="Access"/> let through.</summary>
    public static Caller Of(HttpContext http) =>
        http.Features.Get<Caller>() ?? throw new InvalidOperationException("No caller: the path is not behind Access.");

    /// <summary>The first of the scopes that it lacks; null if it has them all.</summary>
    public string? Lacks(IEnumerable<string> scopes) => scopes.FirstOrDefault(scope => !Scopes.Contains(scope));
}
