using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using RubLab.Core.Faults;

namespace RubLab.Page.Exports;

/// <summary>One computation of the API: its request read strictly, its answer or its errors written.</summary>
internal static class Computation
{
    public static string Run<TRequest, TAnswer>(
        string request, JsonTypeInfo<TRequest> requestType, Func<TRequest, Result<TAnswer>> compute, JsonTypeInfo<TAnswer> answerType)
        where TRequest : class
        where TAnswer : class
    {
        try
        {
            return JsonSerializer.Deserialize(request, requestType) is { } read
                ? Answer.From(compute(read), answerType)
                : throw new JsonException("The request is null.");
        }
        catch (JsonException fault)
        {
            return Answer.Unreadable(fault);
        }
    }
}
