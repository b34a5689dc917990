using RubLab.Storage.Pairing;

namespace RubLab.Api.Callers;

/// <summary>The cookie that carries a paired device's token.</summary>
/// <remarks>
/// It has a name of its own over TLS. Browsers keep a cookie whose name begins with __Host- to TLS, to this host and to what this
/// host itself set; and they would not let a page without TLS replace a secure cookie of the same name.
/// </remarks>
/// <param name="Token">The device's token.</param>
/// <param name="IsSecure">Whether the browser sends it over TLS alone.</param>
public sealed record SessionCookie(string Token, bool IsSecure)
{
    public const string SecureName = "__Host-rublab";
    public const string PlainName = "rublab";

    /// <summary>The cookie of a request; null if it has none.</summary>
    public static SessionCookie? Of(HttpRequest request)
    {
        if (request.Cookies.TryGetValue(SecureName, out var secure))
        {
            return new SessionCookie(secure, IsSecure: true);
        }

        // Over TLS the plain one may be anybody's who once stood between.
        return !request.IsHttps && request.Cookies.TryGetValue(PlainName, out var plain) ? new SessionCookie(plain, IsSecure: false) : null;
    }

    /// <summary>Sets it, for as long as the device stays paired without being used.</summary>
    public void Give(HttpResponse response)
    {
        var options = Options();
        options.MaxAge = DeviceSessionStore.Life;
        response.Cookies.Append(Name(), Token, options);
    }

    /// <summary>Takes it back.</summary>
    public void Take(HttpResponse response) => response.Cookies.Delete(Name(), Options());

    /// <summary>Without the token, which would end up in a log.</summary>
    public override string ToString() => $"SessionCookie {{ IsSecure = {IsSecure} }}";

    private string Name() => IsSecure ? SecureName : PlainName;

    private CookieOptions Options() => new() { Path = "/", HttpOnly = true, SameSite = SameSiteMode.Strict, Secure = IsSecure };
}
