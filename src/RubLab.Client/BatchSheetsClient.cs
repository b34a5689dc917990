using RubLab.Contracts.Json;
using RubLab.Contracts.Scaling;

namespace RubLab.Client;

/// <summary>Formulas scaled to a pile of cuts.</summary>
public sealed class BatchSheetsClient
{
    private readonly Wire _wire;

    internal BatchSheetsClient(Wire wire) => _wire = wire;

    /// <summary>What to weigh, how much goes on each piece, and the salt it comes to.</summary>
    public Task<BatchSheetResponse> ComputeAsync(BatchSheetRequest request, CancellationToken cancellation = default) => _wire.PostAsync(
        "v1/batch-sheets", request, RubLabJson.Default.BatchSheetRequest, Wire.Answers.BatchSheetResponse, cancellation);
}
