using System.Diagnostics.CodeAnalysis;
using RubLab.Core.Shopping;
using RubLab.Core.Sources;
using RubLab.Core.Yields;

namespace RubLab.Core.Serving;

/// <summary>The reference data about serving: portions, pieces, purchase yields, currencies.</summary>
public sealed class ServingReference
{
    private readonly ILookup<string, PurchaseYield> _purchaseYields;
    private readonly Dictionary<string, Cited> _pieceGrams;
    private readonly Dictionary<string, Currency> _currencies;
    private readonly HashSet<(string CutId, string Method)> _ofGreen;

    internal ServingReference(
        IReadOnlyList<PortionWeight> portions, Dictionary<string, Cited> pieceGrams, ILookup<string, PurchaseYield> purchaseYields,
        IReadOnlyList<Currency> currencies, HashSet<(string CutId, string Method)> ofGreen)
    {
        Portions = portions;
        Currencies = currencies;
        _pieceGrams = pieceGrams;
        _purchaseYields = purchaseYields;
        _currencies = currencies.ToDictionary(c => c.Code, StringComparer.Ordinal);
        _ofGreen = ofGreen;
    }

    /// <summary>One for each appetite.</summary>
    public IReadOnlyList<PortionWeight> Portions { get; }

    public IReadOnlyList<Currency> Currencies { get; }

    /// <summary>Purchase weight of one piece, grams; none for a cut bought by weight.</summary>
    public Cited? PieceGramsOf(string cutId) => _pieceGrams.GetValueOrDefault(cutId);

    public IEnumerable<PurchaseYield> PurchaseYieldsOf(string cutId) => _purchaseYields[cutId];

    public bool TryFindCurrency(string code, [NotNullWhen(true)] out Currency? currency) => _currencies.TryGetValue(code, out currency);

    /// <summary>Whether a cooking yield is of the whole piece, bone in both weights; else it is of the edible portion.</summary>
    public bool IsYieldOfGreen(string cutId, string method) => _ofGreen.Contains((cutId, method));
}
