using RubLab.Core.Catalogues;

namespace RubLab.Contracts.Outputs;

/// <summary>Lines of the pile as a cook calls them.</summary>
internal static class LineNames
{
    /// <summary>The cut's name where the line goes by its cut's id; else what the line was called.</summary>
    public static string Of(string line, Catalogue catalogue) => catalogue.TryFindCut(line, out var cut) ? cut.Name : line;
}
