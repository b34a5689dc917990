namespace RubLab.Storage.Changes;

internal sealed class ChangeRow
{
    public const string Columns = "number AS Number, noun AS Noun, item_id AS ItemId, revision AS Revision, action AS Action, at AS At";

    private const string Put = "put";
    private const string Deleted = "deleted";

    public long Number { get; init; }

    public string Noun { get; init; } = "";

    public string ItemId { get; init; } = "";

    public long Revision { get; init; }

    public string Action { get; init; } = "";

    public string At { get; init; } = "";

    public static string Word(ChangeAction action) => action switch
    {
        ChangeAction.Put => Put,
        ChangeAction.Deleted => Deleted,
        _ => throw new ArgumentOutOfRangeException(nameof(action)),
    };

    public Change ToChange() => new(
        Number,
        Noun,
        ItemId,
        Revision,
        Action switch
        {
            Put => ChangeAction.Put,
            Deleted => ChangeAction.Deleted,
            _ => throw new InvalidDataException($"Change {Number} has the unknown action {Action}."),
        },
        Timestamp.Read(At));
}
