using System.Globalization;
using System.Text;
using RubLab.Core.Catalogues;

namespace RubLab.Core.Remarks;

/// <summary>Collects the findings of one computation, each worded from the catalogue.</summary>
public sealed class FindingLog(Catalogue catalogue)
{
    private readonly List<Finding> _findings = [];

    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Notes a finding; the same words about the same field are noted once.</summary>
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

        var finding = new Finding(code, text.Severity, Filled(text.Message, named), pointer, named, sourceId);
        if (!_findings.Exists(f => f.Code == code && f.Pointer == pointer && f.Message == finding.Message))
        {
            _findings.Add(finding);
        }
    }

    // In one pass, so that a name with braces in it is shown as it is.
    private static string Filled(string template, Dictionary<string, object> named)
    {
        var message = new StringBuilder();
        var at = 0;
        while (at < template.Length)
        {
            var open = template.IndexOf('{', at);
            var close = open < 0 ? -1 : template.IndexOf('}', open);
            if (close < 0)
            {
                break;
            }

            message.Append(template, at, open - at);
            var name = template[(open + 1)..close];
            message.Append(named.TryGetValue(name, out var value) ? InWords(value) : throw new ArgumentException($"No value for {{{name}}}.", nameof(named)));
            at = close + 1;
        }

        return message.Append(template, at, template.Length - at).ToString();
    }

    private static string InWords(object value) => value switch
    {
        double number => Math.Round(number, 3).ToString(CultureInfo.InvariantCulture),
        string[] words => string.Join(", ", words),
        _ => value.ToString() ?? "",
    };
}
