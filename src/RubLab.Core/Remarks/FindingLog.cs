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
        var message = new StringBuilder(text.Message);
        foreach (var (name, value) in parameters)
        {
            named[name] = value;
            message.Replace("{" + name + "}", InWords(value));
        }

        var finding = new Finding(code, text.Severity, message.ToString(), pointer, named, sourceId);
        if (!_findings.Exists(f => f.Code == code && f.Pointer == pointer && f.Message == finding.Message))
        {
            _findings.Add(finding);
        }
    }

    private static string InWords(object value) => value switch
    {
        double number => Math.Round(number, 3).ToString(CultureInfo.InvariantCulture),
        string[] words => string.Join(", ", words),
        _ => value.ToString() ?? "",
    };
}
