using RubLab.Client;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;

namespace RubLab.Snippets;

internal static class FirstSheet
{
    /// <summary>What to weigh for two briskets, from a formula of the kitchen.</summary>
    public static async Task<IReadOnlyList<string>> ToWeighAsync(HttpClient http, CancellationToken cancellation)
    {
        // http.BaseAddress is the server's; off loopback, http.DefaultRequestHeaders.Authorization carries the key.
        var client = new RubLabClient(http);
        var sheet = await client.BatchSheets.ComputeAsync(
            new BatchSheetRequest
            {
                Pile =
                [
                    new PileLineRequest
                    {
                        Cut = "beef-brisket",
                        Pieces =
                        [
                            new PieceRequest { Weight = QuantityRequest.Of(5.2, "kg") },
                            new PieceRequest { Weight = QuantityRequest.Of(6.1, "kg") },
                        ],
                    },
                ],
                Treatments = [new TreatmentRequest { FormulaId = "lockside-evening-salt-and-pepper" }],
            },
            cancellation);
        return sheet.Treatments
            .SelectMany(treatment => treatment.Lines)
            .Select(line => $"{line.ToMix.Value} {line.ToMix.Unit} {line.Ingredient}, {line.Form}")
            .ToList();
    }
}
