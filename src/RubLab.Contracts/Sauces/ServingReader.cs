using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Sauces;
using RubLab.Core.Sources;

namespace RubLab.Contracts.Sauces;

/// <summary>The servings a sauce is asked about, with the density that turns their volumes into weights.</summary>
internal sealed class ServingReader
{
    private static readonly string[] Usual = ["barbecue-sauce", "major-condiment"];

    private readonly List<ReferenceAmount> _amounts = [];
    private readonly Cited _assumed;
    private readonly double? _density;
    private readonly Quantity? _portion;
    private readonly bool _isPortionVolume;
    private readonly double _portionInBase;

    private ServingReader(SauceRequest request, Catalogue catalogue, Place at)
    {
        _assumed = catalogue.Constants.SauceDensityGramsPerMillilitre;
        _density = Reader.Amount(request.Density, at.At("density"), Bounds.SauceDensity, isRequired: false, Dimension.Density);
        if (request.Portion is { } portion
            && Reader.Authored(portion, at.At("portion"), _ => Bounds.SaucePortion, out var unit, Dimension.Mass, Dimension.Volume) is { } value)
        {
            _portion = new Quantity(value, unit!.Symbol);
            _isPortionVolume = unit.Dimension == Dimension.Volume;
            _portionInBase = unit.ToBase(value);
        }

        ReadAmounts(request.ReferenceAmounts, catalogue, at.At("referenceAmounts"));
    }

    private Band Density => _density is { } known ? Band.Exact(known) : _assumed.Band;

    /// <summary>Reads them; null where anything is at fault.</summary>
    public static ServingReader? Read(SauceRequest request, Catalogue catalogue, Place at)
    {
        var before = at.Log.Count;
        var reader = new ServingReader(request, catalogue, at);
        return at.Log.Count == before ? reader : null;
    }

    /// <summary>Notes a density that had to be assumed.</summary>
    public void Notice(string sauce, FindingLog findings)
    {
        if (_density is null && (_isPortionVolume || _amounts.Exists(a => a.Grams is null)))
        {
            findings.Add(
                "sauce-density-assumed", "/density", _assumed.Citation.SourceId,
                ("sauce", sauce), ("low", _assumed.Band.Low), ("high", _assumed.Band.High));
        }
    }

    /// <summary>The portion that was asked for.</summary>
    /// <param name="sodium">Grams of sodium per kilogram of finished sauce.</param>
    public SauceServingResponse? Portion(Band sodium) => _portion is { } amount
        ? Serving(null, amount, _isPortionVolume, _portionInBase, sodium)
        : null;

    /// <summary>Its sodium, for the checks.</summary>
    /// <param name="sodium">Grams of sodium per kilogram of finished sauce.</param>
    public Band? PortionSodiumMilligrams(Band sodium) => _portion is null ? null : Weight(_isPortionVolume, _portionInBase).Times(sodium);

    public IReadOnlyList<SauceServingResponse> ReferenceAmounts(Band sodium) => _amounts.ConvertAll(amount => amount.Grams is { } grams
        ? Serving(amount, new Quantity(grams, "g"), false, grams, sodium)
        : Serving(amount, new Quantity(amount.Millilitres!.Value, "mL"), true, amount.Millilitres.Value, sodium));

    // Grams of serving times grams per kilogram is milligrams.
    private SauceServingResponse Serving(ReferenceAmount? amount, Quantity shown, bool isVolume, double inBase, Band sodium)
    {
        var weight = Weight(isVolume, inBase);
        return new SauceServingResponse(
            amount?.Id, amount?.Name, shown,
            QuantityBand.From(weight, "g", weight.IsExact ? Rounded.Exact : Rounded.Estimate),
            QuantityBand.From(weight.Times(sodium), "mg", Rounded.Whole),
            amount?.Citation.SourceId, amount?.Citation.Locator);
    }

    private Band Weight(bool isVolume, double inBase) => isVolume ? Density.Times(inBase) : Band.Exact(inBase);

    private void ReadAmounts(IReadOnlyList<string?>? ids, Catalogue catalogue, Place at)
    {
        var known = catalogue.ReferenceAmounts.Where(a => a.Grams is not null || a.Millilitres is not null).ToList();
        if (ids is { Count: 0 } or { Count: > 100 })
        {
            at.Fault("out-of-range", "Name 1 to 100 reference amounts, or leave this out.", ("count", (double)ids.Count));
            return;
        }

        for (var i = 0; i < (ids?.Count ?? Usual.Length); i++)
        {
            var id = ids is null ? Usual[i] : ids[i];
            if (id is null)
            {
                Reader.Missing(at.At(i));
            }
            else if (known.Find(a => a.Id == id) is { } amount)
            {
                _amounts.Add(amount);
            }
            else
            {
                at.At(i).Fault(
                    "unknown-reference-amount", $"'{Shown.Text(id)}' is not one of {string.Join(", ", known.Select(a => a.Id))}.",
                    ("value", Shown.Text(id)), ("allowed", known.Select(a => a.Id).ToArray()));
            }
        }
    }
}
