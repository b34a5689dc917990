using RubLab.Contracts.Json;
using RubLab.Contracts.Timing;

namespace RubLab.Client;

/// <summary>How far salt gets, and how long it needs.</summary>
public sealed class SaltingTimesClient
{
    private const string Path = "v1/salting-times";

    private readonly Wire _wire;

    internal SaltingTimesClient(Wire wire) => _wire = wire;

    /// <summary>The depth, the profile and the times of one piece.</summary>
    public Task<SaltingTimesResponse> ComputeAsync(SaltingTimesRequest request, CancellationToken cancellation = default) => _wire.PostAsync(
        Path, request, RubLabJson.Default.SaltingTimesRequest, Wire.Answers.SaltingTimesResponse, cancellation);

    /// <summary>The same as a picture, an SVG document.</summary>
    /// <param name="request">The question.</param>
    /// <param name="plot">profile or uptake.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<string> PlotAsync(SaltingTimesRequest request, string plot = "profile", CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plot);
        var message = new HttpRequestMessage(HttpMethod.Post, $"{Path}?plot={Uri.EscapeDataString(plot)}")
        {
            Content = Wire.Body(request, RubLabJson.Default.SaltingTimesRequest),
            Headers = { Accept = { new("image/svg+xml") } },
        };
        using var answer = await _wire.SendAsync(message, cancellation).ConfigureAwait(false);
        return await answer.Content.ReadAsStringAsync(cancellation).ConfigureAwait(false);
    }
}
