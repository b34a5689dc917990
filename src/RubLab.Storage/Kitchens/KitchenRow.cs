namespace RubLab.Storage.Kitchens;

internal sealed class KitchenRow
{
    public const string Columns =
        "id AS Id, name AS Name, density_revision AS DensityRevision, yield_revision AS YieldRevision, last_change AS LastChange, "
        + "examples_edition AS ExamplesEdition, created_at AS CreatedAt";

    public string Id { get; init; } = "";

    public string Name { get; init; } = "";

    public long DensityRevision { get; init; }

    public long YieldRevision { get; init; }

    public long LastChange { get; init; }

    public string? ExamplesEdition { get; init; }

    public string CreatedAt { get; init; } = "";

    public Kitchen ToKitchen() => new(Id, Name, DensityRevision, YieldRevision, LastChange, ExamplesEdition, Timestamp.Read(CreatedAt));
}
