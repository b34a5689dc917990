namespace RubLab.Core.Meat;

/// <summary>Meat that is chopped or ground: sold so, or on its way into a sausage or a patty.</summary>
public static class GroundProducts
{
    private const string Ground = "ground";
    private const string RedMeat = "red-meat";

    /// <summary>The products that are made of ground meat whatever the cut.</summary>
    public static IReadOnlyCollection<string> Ids { get; } =
        new HashSet<string>(["fresh-sausage", "cooked-sausage", "fermented-sausage", "dry-sausage", "chorizo", "patty"], StringComparer.Ordinal);

    /// <summary>Whether what goes on this meat is mixed into it.</summary>
    public static bool AreMadeOf(Cut cut, string? product) => cut.Class == Ground || (product is not null && Ids.Contains(product));

    /// <summary>The class its cautions go by: the figure for whole roasts is not shown for meat that will be ground.</summary>
    public static string ClassOf(Cut cut, string? product) => cut.Class == RedMeat && AreMadeOf(cut, product) ? Ground : cut.Class;
}
