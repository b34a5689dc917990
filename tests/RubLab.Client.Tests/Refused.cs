using System.Net;

namespace RubLab.Client.Tests;

/// <summary>Asserts on refusals.</summary>
internal static class Refused
{
    public static async Task<RubLabProblemException> WithAsync(HttpStatusCode status, Func<Task> request)
    {
        var refused = await Assert.ThrowsAsync<RubLabProblemException>(request);
        Assert.Equal(status, refused.Status);
        Assert.StartsWith("/problems/", refused.Problem.Type, StringComparison.Ordinal);
        Assert.StartsWith($"{(int)status}: ", refused.Message, StringComparison.Ordinal);
        return refused;
    }
}
