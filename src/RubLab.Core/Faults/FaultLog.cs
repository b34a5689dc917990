namespace RubLab.Core.Faults;

/// <summary>Collects every fault found while one request is read.</summary>
public sealed class FaultLog
{
    /// <summary>How many faults an answer lists; the rest are counted, so a wrong answer stays readable.</summary>
    public const int Listed = 100;

    private static readonly Dictionary<string, object> None = [];

    private readonly List<Fault> _faults = [];

    public IReadOnlyList<Fault> Faults => _faults;

    /// <summary>All faults noted, those beyond <see cref="Listed"/> included.</summary>
    public int Count { get; private set; }

    public bool IsClean => Count == 0;

    /// <summary>The document itself.</summary>
    public Place Root => new(this);

    /// <summary>The value if nothing was noted, the faults otherwise.</summary>
    /// <exception cref="ArgumentException">No value, yet no fault says why.</exception>
    public Result<T> ResultOf<T>(T? value)
        where T : class
    {
        if (!IsClean)
        {
            return new Result<T>(null, this);
        }

        return value is not null ? new Result<T>(value, this) : throw new ArgumentException("No value and no fault.", nameof(value));
    }

    internal void Add(string pointer, string code, string detail, ReadOnlySpan<(string Name, object Value)> parameters)
    {
        Count++;
        if (_faults.Count >= Listed)
        {
            return;
        }

        var named = None;
        if (!parameters.IsEmpty)
        {
            named = new Dictionary<string, object>(parameters.Length, StringComparer.Ordinal);
            foreach (var (name, value) in parameters)
            {
                named[name] = value;
            }
        }

        _faults.Add(new Fault(pointer, code, detail, named));
    }
}
