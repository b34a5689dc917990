using System.Globalization;

namespace RubLab.Core.Faults;

/// <summary>A place in the document being read: where a fault found there is noted.</summary>
public readonly struct Place(FaultLog log, string pointer)
{
    public FaultLog Log { get; } = log;

    /// <summary>JSON pointer (RFC 6901); empty for the whole document.</summary>
    public string Pointer { get; } = pointer;

    public Place At(string member) => new(Log, Pointer + "/" + member.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal));

    public Place At(int index) => new(Log, Pointer + "/" + index.ToString(CultureInfo.InvariantCulture));

    public void Fault(string code, string detail, params ReadOnlySpan<(string Name, object Value)> parameters) =>
        Log.Add(Pointer, code, detail, parameters);
}
