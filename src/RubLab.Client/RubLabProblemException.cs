using System.Net;
using RubLab.Contracts.Faults;

namespace RubLab.Client;

/// <summary>The server refused; the problem says why.</summary>
public sealed class RubLabProblemException : Exception
{
    public RubLabProblemException(Problem problem)
        : base(Words(problem))
    {
        Problem = problem;
    }

    /// <summary>As the server wrote it; where something else answered in its place, its status and phrase.</summary>
    public Problem Problem { get; }

    public HttpStatusCode Status => (HttpStatusCode)Problem.Status;

    /// <summary>Every broken rule; empty where the problem has none.</summary>
    public IReadOnlyList<ErrorResponse> Errors => Problem.Errors ?? [];

    private static string Words(Problem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var words = $"{problem.Status}: {problem.Title}";
        if (problem.Detail is { } detail)
        {
            words += " " + detail;
        }

        return problem.Errors is [{ } first, ..] errors
            ? words + $" {first.Pointer}: {first.Detail}" + (errors.Count > 1 ? $" (and {errors.Count - 1} more)" : "")
            : words;
    }
}
