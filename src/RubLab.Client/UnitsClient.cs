using RubLab.Contracts.Reference;

namespace RubLab.Client;

/// <summary>The unit symbols.</summary>
public sealed class UnitsClient
{
    private readonly Wire _wire;

    internal UnitsClient(Wire wire) => _wire = wire;

    /// <summary>Every unit with its factor; the table is short and not paged.</summary>
    public async Task<IReadOnlyList<UnitResponse>> ListAsync(CancellationToken cancellation = default) =>
        (await _wire.GetAsync("v1/units", Wire.Answers.ListResponseUnitResponse, cancellation).ConfigureAwait(false)).Items;
}
