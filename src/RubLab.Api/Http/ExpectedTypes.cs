using System.Text.Json;
using System.Text.RegularExpressions;
using RubLab.Contracts.Quantities;

namespace RubLab.Api.Http;

/// <summary>What belongs where a JSON value of another type stands, in the sender's words.</summary>
internal static partial class ExpectedTypes
{
    private const string WholeNumber = "A whole number, and not too large a one,";

    /// <summary>From the reader's messages: the inner one tells of a plain value, the outer names the type, at times only that of the object around it.</summary>
    public static string InWords(JsonException json)
    {
        var type = Converted().Match(json.Message).Groups[1].Value;
        var named = type.Contains("Collections", StringComparison.Ordinal) ? "A list" : OfType(type[(type.LastIndexOfAny(['.', '[']) + 1)..].TrimEnd(']'));
        return Plain().Match(json.InnerException?.Message ?? "").Groups[1].Value switch
        {
            "as a string" => "A text",
            "as a boolean" => "True or false",
            "as a number" when named != WholeNumber => "A number",
            "out of bounds for an Int" => WholeNumber,
            "too large or too small" => "A number, and not too large a one,",
            _ => named,
        };
    }

    private static string OfType(string name) => name switch
    {
        nameof(Int32) or nameof(Int64) => WholeNumber,
        nameof(Double) or nameof(Decimal) => "A number",
        nameof(String) => "A text",
        nameof(Boolean) => "True or false",
        nameof(QuantityRequest) => "An object with value and unit",
        nameof(EstimateRequest) => "An object with value and unit, or with low, typical, high and unit,",
        "" => "A value of another type",
        _ => "An object",
    };

    [GeneratedRegex(@"^The JSON value could not be converted to (.+?)\. Path: ", RegexOptions.Singleline)]
    private static partial Regex Converted();

    [GeneratedRegex("(as a string|as a boolean|as a number|out of bounds for an Int|too large or too small)")]
    private static partial Regex Plain();
}
