using RubLab.Api.Callers;
using RubLab.Api.Formulas;
using RubLab.Contracts.Pairing;
using RubLab.Storage.Pairing;

namespace RubLab.Api.Endpoints;

/// <summary>Codes and paired devices as answers.</summary>
internal static class PairingAnswers
{
    /// <summary>What a device without TLS is told.</summary>
    public const string Unencrypted =
        "This connection is not encrypted: whoever shares the network can read what is sent and copy this device's access. The page works offline only over https.";

    public static PairingCodeResponse Of(OpenCode open, string code) =>
        new(PairingCodeText.Show(code), open.Scopes, open.DeviceName, FormulaDocuments.Time(open.ExpiresAt));

    /// <summary>A device in a list.</summary>
    public static SessionResponse Of(DeviceSession session, bool isCurrent, string? warning) => new()
    {
        Id = session.Id,
        Name = session.Name,
        Scopes = session.Scopes,
        IsCurrent = isCurrent,
        CreatedAt = FormulaDocuments.Time(session.CreatedAt),
        LastUsedAt = FormulaDocuments.Time(session.LastUsedAt),
        ExpiresAt = FormulaDocuments.Time(session.ExpiresAt),
        Warning = isCurrent ? warning : null,
    };

    /// <summary>The warning for whoever sent a request; null over TLS, and on this machine itself.</summary>
    public static string? WarningOf(HttpContext http, SessionCookie? cookie) =>
        cookie is { IsSecure: true } || Loopback.Refusal(http) is null ? null : Unencrypted;
}
