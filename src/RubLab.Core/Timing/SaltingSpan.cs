using RubLab.Core.Diffusion;
using RubLab.Core.Quantities;
using RubLab.Core.Solving;

namespace RubLab.Core.Timing;

/// <summary>Carries a figure of one exact piece over the bands of diffusivity and size.</summary>
/// <remarks>
/// In a slab or a cylinder a figure that rises with the travel and falls with the size has its ends at two corners. Others have one
/// hump: the saltiness of a place midway rises above the mean before it comes back to it, and a piece a little too thin for the
/// depth is salted only that deep. Their highest value is searched for. A brick's figures need not fall with its size, for a
/// narrower one has more salted edge; they are looked at in several sizes, all dimensions moving together from low to high.
/// </remarks>
internal sealed class SaltingSpan
{
    private const int SearchSteps = 24;
    private const int BrickSizes = 5;
    private const int BrickTravels = 9;

    private readonly SaltingRequest _request;
    private readonly Journey _journey;
    private readonly SaltField _typical;

    // The smallest first.
    private readonly SaltField[] _sizes;
    private readonly Band _travel;

    public SaltingSpan(SaltingRequest request, Journey journey, SaltingLimits limits)
    {
        (_request, _journey, Limits) = (request, journey, limits);
        var diffusivity = request.Diffusivity.SquareMetresPerSecond;
        _travel = new Band(journey.Travel(diffusivity.Low), journey.Travel(diffusivity.Typical), journey.Travel(diffusivity.High));
        _typical = request.Body.TypicalField(request.Bath);
        var sizes = IsBrick ? BrickSizes : 2;
        _sizes = request.Body.IsExact
            ? [_typical]
            : [.. Enumerable.Range(0, sizes).Select(i => request.Body.FieldAt((double)i / (sizes - 1), request.Bath))];
    }

    public SaltingLimits Limits { get; }

    private bool IsBrick => _request.Body.Shape == SaltedShape.Brick;

    private bool IsExact => _request.Body.IsExact && _travel.IsExact;

    /// <summary>A figure that rises with travel.</summary>
    public Band Rising(Func<SaltField, double, double> figure)
    {
        var typical = figure(_typical, _travel.Typical);
        return IsExact
            ? Band.Exact(typical)
            : Ordered(_sizes.Min(field => figure(field, _travel.Low)), typical, _sizes.Max(field => figure(field, _travel.High)));
    }

    /// <summary>The uptake and the middle at an hour.</summary>
    public SaltingMoment By(double hours)
    {
        var diffusivity = _request.Diffusivity.SquareMetresPerSecond;
        var typical = _typical.Middle(_journey.TravelBy(hours, diffusivity.Typical));
        if (IsExact)
        {
            return new SaltingMoment(hours, Band.Exact(typical.Uptake), Band.Exact(typical.CentreToMean));
        }

        double slow = _journey.TravelBy(hours, diffusivity.Low), quick = _journey.TravelBy(hours, diffusivity.High);
        var low = Array.ConvertAll(_sizes, field => field.Middle(slow));
        var high = Array.ConvertAll(_sizes, field => field.Middle(quick));
        return new SaltingMoment(
            hours,
            Ordered(low.Min(m => m.Uptake), typical.Uptake, high.Max(m => m.Uptake)),
            Ordered(low.Min(m => m.CentreToMean), typical.CentreToMean, high.Max(m => m.CentreToMean)));
    }

    /// <summary>Hours until a travel.</summary>
    public Band Hours(Func<SaltField, double> travel)
    {
        var diffusivity = _request.Diffusivity.SquareMetresPerSecond;
        var typical = _journey.HoursFor(travel(_typical), diffusivity.Typical);
        if (IsExact)
        {
            return Band.Exact(typical);
        }

        var travels = Array.ConvertAll(_sizes, field => travel(field));
        return Ordered(_journey.HoursFor(travels.Min(), diffusivity.High), typical, _journey.HoursFor(travels.Max(), diffusivity.Low));
    }

    public Band Depth(double share)
    {
        var ends = Rising((field, travel) => field.Depth(share, travel));
        return IsBrick || _request.Body.IsExact
            ? ends
            : Ordered(ends.Low, ends.Typical, Bracket.Greatest(new DepthBySize(this, share), 0, 1, SearchSteps));
    }

    public IReadOnlyList<ProfilePoint> Profile(int places)
    {
        var (line, layers) = _typical.Profile(_travel.Typical, places);
        if (IsExact)
        {
            return Points(i => Band.Exact(line[i]), i => Band.Exact(layers[i]));
        }

        if (IsBrick)
        {
            var all = _sizes.SelectMany(field => Travels().Select(travel => field.Profile(travel, places))).ToList();
            return Points(i => Over(all.Select(p => p.Line[i]), line[i]), i => Over(all.Select(p => p.Layers[i]), layers[i]));
        }

        return Points(Along, Along);

        IReadOnlyList<ProfilePoint> Points(Func<int, Band> onLine, Func<int, Band> ofLayer) => [.. Enumerable.Range(0, places).Select(i =>
        {
            var here = onLine(i);
            return new ProfilePoint((double)i / (places - 1), here, IsBrick ? ofLayer(i) : here);
        })];

        // From the least travel in the largest piece to the most in the smallest: the travel over the square of the reach is all
        // that counts.
        Band Along(int i)
        {
            var path = new Path(this, (double)i / (places - 1));
            return Ordered(Math.Min(path.At(0), path.At(1)), line[i], Bracket.Greatest(path, 0, 1, SearchSteps));
        }
    }

    /// <summary>Answers with the same figures are the same, whatever they were read from.</summary>
    public override bool Equals(object? obj) => obj is SaltingSpan;

    public override int GetHashCode() => 0;

    private IEnumerable<double> Travels() => _travel.IsExact
        ? [_travel.Typical]
        : Enumerable.Range(0, BrickTravels).Select(i => _travel.Low * Math.Pow(_travel.High / _travel.Low, (double)i / (BrickTravels - 1)));

    private SaltField FieldAt(double size) => _request.Body.IsExact
        ? _typical
        : _typical.Reaching(_sizes[0].ReachMillimetres * Math.Pow(_sizes[^1].ReachMillimetres / _sizes[0].ReachMillimetres, size));

    private static Band Over(IEnumerable<double> values, double typical)
    {
        double low = typical, high = typical;
        foreach (var value in values)
        {
            (low, high) = (Math.Min(low, value), Math.Max(high, value));
        }

        return new Band(low, typical, high);
    }

    // Rounding must not put the typical value outside its band.
    private static Band Ordered(double low, double typical, double high) => new(Math.Max(Math.Min(low, typical), 0), typical, Math.Max(high, typical));

    private readonly struct DepthBySize(SaltingSpan span, double share) : IFunction
    {
        public double At(double x) => span.FieldAt(x).Depth(share, span._travel.High);
    }

    private readonly struct Path(SaltingSpan span, double position) : IFunction
    {
        public double At(double x)
        {
            var field = span.FieldAt(1 - x);
            var travel = span._travel.Low * Math.Pow(span._travel.High / span._travel.Low, x);
            return field.At(position, travel) / field.Uptake(travel);
        }
    }
}
