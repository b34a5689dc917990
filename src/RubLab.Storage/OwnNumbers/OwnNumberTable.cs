namespace RubLab.Storage.OwnNumbers;

/// <summary>Where one kind of own number is kept.</summary>
/// <param name="Name">The table of those there are, tombstones among them.</param>
/// <param name="Revisions">The table of all that was ever written.</param>
/// <param name="KeyColumns">What one is of, the same in both tables.</param>
/// <param name="KitchenRevision">The column of <c>kitchens</c> that goes up with every write.</param>
/// <param name="Noun">The word for one in the change feed.</param>
internal sealed record OwnNumberTable(string Name, string Revisions, IReadOnlyList<string> KeyColumns, string KitchenRevision, string Noun)
{
    public static OwnNumberTable Densities { get; } =
        new("densities", "density_revisions", ["ingredient_id", "form_id"], "density_revision", "density");

    public static OwnNumberTable Yields { get; } =
        new("yields", "yield_revisions", ["cut_id"], "yield_revision", "yield");

    public OwnNumberSql Sql { get; } = new(Name, Revisions, KeyColumns, KitchenRevision);
}
