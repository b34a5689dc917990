namespace RubLab.Api.Http;

/// <summary>Who a request speaks for.</summary>
/// <param name="KitchenId">The kitchen.</param>
/// <param name="KeyId">The key used; none on the loopback kitchen.</param>
/// <param name="CanWrite">Whether it may change what is stored.</param>
public sealed record Caller(string KitchenId, string? KeyId, bool CanWrite)
{
    public const string ReadScope = "read";
    public const string WriteScope = "write";

    /// <summary>The caller that <see cref="Access"/> let through.</summary>
    public static Caller Of(HttpContext http) =>
        http.Features.Get<Caller>() ?? throw new InvalidOperationException("No caller: the path is not behind Access.");
}
