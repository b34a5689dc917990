namespace RubLab.Api.Http;

/// <summary>One kind of problem: the word in its type's path, its status and what to do about it.</summary>
public sealed record ProblemType(string Name, int Status, string Title, string Explanation)
{
    public string Path => "/problems/" + Name;
}
