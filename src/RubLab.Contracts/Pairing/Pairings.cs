using RubLab.Contracts.Reading;
using RubLab.Core.Faults;

namespace RubLab.Contracts.Pairing;

/// <summary>Reads what is sent to pair a device.</summary>
public static class Pairings
{
    private const int MostScopes = 3;

    private static readonly AccessScope[] Usual = [AccessScope.Read, AccessScope.Write];

    /// <summary>A request for a code.</summary>
    public static Result<PairingCodeOrder> Check(PairingCodeRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var log = new FaultLog();
        var scopes = Scopes(request.Scopes, log.Root.At("scopes"));
        var name = Names.Name(request.Name, log.Root.At("name"), isRequired: false);
        return log.ResultOf(log.IsClean ? new PairingCodeOrder(scopes, name) : null);
    }

    /// <summary>A request to be paired.</summary>
    public static Result<SessionOrder> Check(SessionRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var log = new FaultLog();
        var at = log.Root.At("code");
        if (request.Code is null)
        {
            Reader.Missing(at);
        }
        else if (!PairingCodeText.TryRead(request.Code, out _))
        {
            // What was typed is not repeated: nearly a code, it may be one for somebody else's eyes.
            at.Fault("bad-code", $"A code is {PairingCodeText.Length} of {PairingCodeText.Alphabet}.", ("alphabet", PairingCodeText.Alphabet));
        }

        var name = Names.Name(request.Name, log.Root.At("name"), isRequired: false);
        return log.ResultOf(log.IsClean && PairingCodeText.TryRead(request.Code, out var code) ? new SessionOrder(code, name) : null);
    }

    private static List<string> Scopes(IReadOnlyList<string?>? asked, Place at)
    {
        var scopes = new HashSet<AccessScope>();
        if (asked is null)
        {
            scopes.UnionWith(Usual);
        }
        else if (asked.Count > MostScopes)
        {
            at.Fault("too-many", $"There are {MostScopes} scopes.", ("most", (double)MostScopes));
        }
        else
        {
            for (var i = 0; i < asked.Count; i++)
            {
                if (asked[i] is not { } word)
                {
                    Reader.Missing(at.At(i));
                }
                else if (Vocabulary.Scopes.Read(word, at.At(i)) is { } scope)
                {
                    scopes.Add(scope);
                }
            }

            if (at.Log.IsClean && !scopes.Contains(AccessScope.Read))
            {
                at.Fault("required", "A device needs at least the scope read.");
            }
        }

        return scopes.Order().Select(scope => Vocabulary.Scopes[scope]).ToList();
    }
}
