using System.Globalization;
using System.Text;

namespace RubLab.Core.Faults;

/// <summary>A place in the document being read: where a fault found there is noted.</summary>
/// <remarks>The pointer is put together only when it is asked for; reading a sound document hardly ever asks.</remarks>
public readonly struct Place
{
    private readonly Step? _last;

    internal Place(FaultLog log)
        : this(log, null)
    {
    }

    private Place(FaultLog log, Step? last)
    {
        Log = log;
        _last = last;
    }

    public FaultLog Log { get; }

    /// <summary>JSON pointer (RFC 6901); empty for the whole document.</summary>
    public string Pointer
    {
        get
        {
            var text = new StringBuilder();
            _last?.WriteTo(text);
            return text.ToString();
        }
    }

    public Place At(string member) => new(Log, new Step(_last, member, 0));

    public Place At(int index) => new(Log, new Step(_last, null, index));

    public void Fault(string code, string detail, params ReadOnlySpan<(string Name, object Value)> parameters) =>
        Log.Add(Pointer, code, detail, parameters);

    private sealed class Step(Step? parent, string? member, int index)
    {
        public void WriteTo(StringBuilder text)
        {
            parent?.WriteTo(text);
            text.Append('/');
            if (member is null)
            {
                text.Append(CultureInfo.InvariantCulture, $"{index}");
            }
            else
            {
                text.Append(member.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal));
            }
        }
    }
}
