using System.Text;
using RubLab.Core.Catalogues;

namespace RubLab.Core.Remarks;

/// <summary>Collects the findings of one computation, each worded from the catalogue.</summary>
public sealed class FindingLog(Catalogue catalogue)
{
    private const string Range = " to ";

    private readonly List<Finding> _findings = [];

    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Notes a finding; the same words about the same field are noted once.</summary>
    /// <param name="code">One the catalogue has a text for.</param>
    /// <param name="pointer">The field it is about; none where it is about the whole.</param>
    /// <param name="sourceId">Where a figure it rests on comes from.</param>
    /// <param name="parameters">string, double, string[], or any of these <see cref="Said"/> in other words.</param>
    /// <exception cref="ArgumentException">The catalogue has no text for the code.</exception>
    public void Add(string code, string? pointer, string? sourceId, params ReadOnlySpan<(string Name, object Value)> parameters)
    {
        if (!catalogue.FindingTexts.TryGetValue(code, out var text))
        {
            throw new ArgumentException($"No text for finding '{code}'.", nameof(code));
        }

        var named = new Dictionary<string, object>(parameters.Length, StringComparer.Ordinal);
        foreach (var (name, value) in parameters)
        {
            named[name] = value;
        }

        var message = Filled(text.Message, named);
        foreach (var (name, value) in parameters)
        {
            named[name] = value is Said said ? said.Value : value;
        }

        var finding = new Finding(code, text.Severity, message, pointer, named, sourceId);
        if (!_findings.Exists(f => f.Code == code && f.Pointer == pointer && f.Message == finding.Message))
        {
            _findings.Add(finding);
        }
    }

    // In one pass, so that a name with braces in it is shown as it is. A band whose ends read alike is one figure.
    private static string Filled(string template, Dictionary<string, object> named)
    {
        var message = new StringBuilder();
        var at = 0;
        var last = "";
        var bound = (named.GetValueOrDefault("limit") ?? named.GetValueOrDefault("highest")) as double?;
        while (at < template.Length)
        {
            var open = template.IndexOf('{', at);
            var close = open < 0 ? -1 : template.IndexOf('}', open);
            if (close < 0)
            {
                break;
            }

            var between = template[at..open];
            var name = template[(open + 1)..close];
            var words = named.TryGetValue(name, out var value) ? InWords(value, bound) : throw new ArgumentException($"No value for {{{name}}}.", nameof(named));
            if (between != Range || words != last)
            {
                message.Append(between).Append(words);
            }

            last = words;
            at = close + 1;
        }

        return message.Append(template, at, template.Length - at).ToString();
    }

    // What stands beside a bound must not be read as the bound.
    private static string InWords(object value, double? bound) => value switch
    {
        Said said => said.Words,
        double number when bound is { } other => Figures.Read(number, other),
        double number => Figures.Read(number),
        string[] words => string.Join(", ", words),
        _ => value.ToString() ?? "",
    };
}
