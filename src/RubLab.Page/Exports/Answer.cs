using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using RubLab.Contracts.Faults;
using RubLab.Core.Faults;

namespace RubLab.Page.Exports;

/// <summary>What an exported computation gives: <c>{"ok": the API's answer}</c> or <c>{"errors": the API's errors}</c>.</summary>
internal static class Answer
{
    public static string From<T>(Result<T> result, JsonTypeInfo<T> type)
        where T : class => result.IsGood
            ? Write("ok", result.Value, type)
            : Errors(ErrorResponse.From(result.Log));

    /// <summary>For text that is no such document: the first fault, with the place where reading stopped.</summary>
    public static string Unreadable(JsonException fault) =>
        Errors([new ErrorResponse("", "unreadable", $"This cannot be read, at {fault.Path ?? "the start"}.", new Dictionary<string, object>())]);

    private static string Errors(IReadOnlyList<ErrorResponse> errors) =>
        Write("errors", errors, RequestJson.Default.IReadOnlyListErrorResponse);

    private static string Write<T>(string member, T value, JsonTypeInfo<T> type)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer))
        {
            writer.WriteStartObject();
            writer.WritePropertyName(member);
            JsonSerializer.Serialize(writer, value, type);
            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }
}
