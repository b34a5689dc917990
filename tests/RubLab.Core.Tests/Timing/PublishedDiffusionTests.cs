using RubLab.Core.Diffusion;
using RubLab.Core.Quantities;
using RubLab.Core.Solving;
using RubLab.Core.Tests.Diffusion;
using RubLab.Core.Tests.Published;
using RubLab.Core.Timing;

namespace RubLab.Core.Tests.Timing;

/// <summary>Every published figure on diffusion, by the product's closed forms and by its finite volumes.</summary>
public sealed class PublishedDiffusionTests
{
    private const double Numerical = 1e-4;

    private static readonly List<PublishedCase> Cases = PublishedCase.Read("diffusion.csv");

    public static TheoryData<string> Ids => new(Cases.Select(c => c.Id));

    // A root is no strength, so there is nothing to integrate.
    public static TheoryData<string> WithoutRoots => new(Cases.Select(c => c.Id).Where(id => !id.StartsWith("D-roots", StringComparison.Ordinal)));

    [Fact]
    public void Every_row_is_here() => Assert.Equal(190, Cases.Count);

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_closed_form_gives_the_printed_digits(string id)
    {
        var one = Cases.Single(c => c.Id == id);

        one.AssertIs(InClosedForm(one));
    }

    [Theory]
    [MemberData(nameof(WithoutRoots))]
    public void The_finite_volumes_agree(string id)
    {
        var one = Cases.Single(c => c.Id == id);
        var (computed, expected) = ByFiniteVolumes(one);

        Assert.True(Math.Abs(computed - expected) <= Numerical, $"{id}: computed {computed:R}, expected {expected:R}.");
    }

    private static double InClosedForm(PublishedCase one)
    {
        double In(string name) => one.Input(name);
        switch (Kind(one))
        {
            case "A-slab-uptake" or "H-dim-const-surface":
                return Piece(one, SaltingMethod.SaltBed).UptakeFraction.Typical;
            case "A-slab-profile" or "I-published-value" when one.Inputs.Contains('X'):
                return new SlabBath(DiffusionCases.Bed).At(In("X"), In("T"));
            case "I-published-value":
                return LimitedBath.Slab(DiffusionCases.Bed).UptakeAt(In("T"));
            case "A-slab-uptake-time":
                return LimitedBath.Slab(DiffusionCases.Bed).TimeFor(In("uptake"));
            case "B-semi-infinite":
                return ErrorFunction.Erfc(In("steep"));
            case "B-semi-infinite-uptake":
                return LimitedBath.Slab(DiffusionCases.Bed).UptakeAt(In("D") * In("t"));
            case "C-plane-source":
                return Sheet(In("X"), In("T"));
            case "C-plane-source-cum":
                return DiffusionCases.Integral(x => Sheet(x, In("T")), In("X"));
            case "C-plane-source-farface-time":
                return DiffusionCases.Slab(SaltingMethod.DryBrine, 0.1) is var request && In("far") is 0.5 or 0.95
                    ? HoursAsTime(In("far") == 0.5 ? request.Answer().HoursToEven50.Typical : request.Answer().HoursToEven95.Typical)
                    : new SlabField(0, 1).TravelToEven(In("far"));
            case "C-plane-source-surface-time":
                return Bracket.Crossing(new Above(In("surface")), 0.05, 1);
            case "C-half-space-source" when one.InputText("of") == "mean-depth":
                return DiffusionCases.Integral(x => x * Sheet(x, In("D") * In("t") / 0.01), 1) * 0.1;
            case "C-half-space-source":
                return 2 * Math.Sqrt(In("D") * In("t")) * Bracket.Crossing(new Error(0.95), 0, 3);
            case "C-two-face-source":
                return (In("w") * Sheet(In("X"), In("T"))) + ((1 - In("w")) * Sheet(1 - In("X"), In("T")));
            case "C-extended-source":
                return Layer(In("h"), In("T"), In("X"));
            case "D-roots":
                return LimitedBath.Slab(In("alpha")).Root((int)In("n"));
            case "D-limited-volume":
                return LimitedBath.Slab(In("alpha")).UptakeAt(In("T"));
            case "D-brine-conc":
                return LimitedBath.Slab(In("alpha")).LiquidAt(In("T"));
            case "E-cylinder-uptake":
                return LimitedBath.Cylinder(DiffusionCases.Bed).UptakeAt(In("T"));
            case "E-sphere-uptake":
                return SphereUptake(In("T"));
            case "F-brick-uptake":
                return DiffusionCases.Of(Brick(In("Tx"), In("Ty"), In("Tz")), SaltingMethod.SaltBed, 1).Answer().UptakeFraction.Typical;
            case "G-surface-resistance":
                return HeldBackUptake(In("L"), In("T"));
            case "H-dim-dry-brine":
                return Piece(one, SaltingMethod.DryBrine).CentreToMean.Typical;
            case "H-dim-dry-brine-time":
                return Piece(one, SaltingMethod.DryBrine).HoursToEven95.Typical;
            default:
                throw new InvalidOperationException($"No closed form for {one.Id}.");
        }
    }

    private static (double Computed, double Expected) ByFiniteVolumes(PublishedCase one)
    {
        double In(string name) => one.Input(name);
        switch (Kind(one))
        {
            case "A-slab-uptake":
                return (DiffusionCases.InBath(DiffusionCases.Bed, In("T")).Mean, one.Answer);
            case "A-slab-profile" or "I-published-value" when one.Inputs.Contains('X'):
                return (DiffusionCases.InBath(DiffusionCases.Bed, In("T")).At(In("X")), one.Answer);
            case "I-published-value":
                return (DiffusionCases.InBath(DiffusionCases.Bed, In("T")).Mean, one.Answer);
            case "A-slab-uptake-time":
                return (DiffusionCases.InBath(DiffusionCases.Bed, one.Answer).Mean, In("uptake"));
            case "B-semi-infinite":
                return (DiffusionCases.InBath(DiffusionCases.Bed, 0.01).At(1 - (0.2 * In("steep"))), one.Answer);
            case "B-semi-infinite-uptake":
                return (DiffusionCases.InBath(DiffusionCases.Bed, In("D") * In("t") / 0.01).Mean * 0.1 / one.Answer, 1);
            case "C-plane-source":
                return (DiffusionCases.PlaneSource(In("T")).At(1 - In("X")), one.Answer);
            case "C-plane-source-cum":
                var within = DiffusionCases.PlaneSource(In("T"));
                return (DiffusionCases.Integral(x => within.At(1 - x), In("X")), one.Answer);
            case "C-plane-source-farface-time":
                return (DiffusionCases.PlaneSource(one.Answer).At(0), In("far"));
            case "C-plane-source-surface-time":
                return (DiffusionCases.PlaneSource(one.Answer).At(1), In("surface"));
            case "C-half-space-source" when one.InputText("of") == "mean-depth":
                var deep = DiffusionCases.PlaneSource(In("D") * In("t") / 0.01);
                return (DiffusionCases.Integral(x => x * deep.At(1 - x), 1) * 0.1 / one.Answer, 1);
            case "C-half-space-source":
                var spread = DiffusionCases.PlaneSource(In("D") * In("t") / 0.01);
                return (DiffusionCases.Integral(x => spread.At(1 - x), one.Answer / 0.1), 0.95);
            case "C-two-face-source":
                var source = DiffusionCases.PlaneSource(In("T"));
                return ((In("w") * source.At(1 - In("X"))) + ((1 - In("w")) * source.At(In("X"))), one.Answer);
            case "C-extended-source":
                var layer = FiniteVolumes.Solve(
                    new FiniteVolumeProblem
                    {
                        Dimensions = 1,
                        WaterRatio = 0,
                        StrengthBetween = (from, to) => Math.Clamp((In("h") - from) / (to - from), 0, 1),
                    },
                    In("T"));
                return (layer.At(In("X")), one.Answer);
            case "D-limited-volume":
                return (DiffusionCases.InBath(In("alpha"), In("T")).Mean * (1 + In("alpha")) / In("alpha"), one.Answer);
            case "D-brine-conc":
                return (DiffusionCases.InBath(In("alpha"), In("T")).Liquid, one.Answer);
            case "E-cylinder-uptake":
                return (DiffusionCases.InBath(DiffusionCases.Bed, In("T"), 2).Mean, one.Answer);
            case "E-sphere-uptake":
                return (DiffusionCases.InBath(DiffusionCases.Bed, In("T"), 3).Mean, one.Answer);
            case "F-brick-uptake":
                return (1 - (Left(In("Tx")) * Left(In("Ty")) * Left(In("Tz"))), one.Answer);
            case "G-surface-resistance":
                return (DiffusionCases.InBath(DiffusionCases.Bed, In("T"), 1, In("L")).Mean, one.Answer);
            case "H-dim-const-surface":
                return (DiffusionCases.InBath(DiffusionCases.Bed, Time(one, In("t"))).Mean, one.Answer);
            case "H-dim-dry-brine":
                return (DiffusionCases.PlaneSource(Time(one, In("t"))).At(0), one.Answer);
            case "H-dim-dry-brine-time":
                return (DiffusionCases.PlaneSource(Time(one, one.Answer * 3600)).At(0), 0.95);
            default:
                throw new InvalidOperationException($"Not integrated: {one.Id}.");
        }
    }

    private static string Kind(PublishedCase one) =>
        one.Id[..one.Id.LastIndexOf('-')] is var kind && kind.StartsWith("D-roots", StringComparison.Ordinal) ? "D-roots" : kind;

    private static double Left(double time) => 1 - DiffusionCases.InBath(DiffusionCases.Bed, time).Mean;

    private static double Sheet(double depth, double time) => new SlabBath(0).At(1 - depth, time);

    private static double HoursAsTime(double hours) => hours * 3600 * 1e-9 / 0.01;

    private static double Time(PublishedCase one, double seconds)
    {
        var reach = one.Input("thickness_mm") / 1000 / one.Input("faces");
        return one.Input("D") * seconds / (reach * reach);
    }

    private static SaltingTimes Piece(PublishedCase one, SaltingMethod method)
    {
        if (one.Inputs.StartsWith("T=", StringComparison.Ordinal))
        {
            return DiffusionCases.Slab(method, one.Input("T")).Answer();
        }

        return new SaltingRequest
        {
            Method = method,
            Body = SaltedBody.Slab(Band.Exact(one.Input("thickness_mm")), (int)one.Input("faces")),
            Stages = [new(4, one.Inputs.Contains("t=8", StringComparison.Ordinal) || one.Inputs.Contains("; t=", StringComparison.Ordinal) ? one.Input("t") / 3600 : 1)],
            Diffusivity = AssumedDiffusivity.Given(Band.Exact(one.Input("D"))),
        }.Answer();
    }

    // Reaches that give those times at a travel of 1 mm2.
    private static SaltedBody Brick(double first, double second, double third) =>
        SaltedBody.Brick(Reaching(first), Reaching(second), Reaching(third));

    private static SaltedDimension Reaching(double time) => new(Band.Exact(2 / Math.Sqrt(time)), 2);

    // A layer of thickness h spread by reflection at both ends: Crank 2.17 in error functions.
    private static double Layer(double h, double time, double x)
    {
        double sum = 0, reach = 2 * Math.Sqrt(time);
        for (var n = -4; n <= 4; n++)
        {
            sum += ErrorFunction.Erf((h + (2 * n) - x) / reach) + ErrorFunction.Erf((h - (2 * n) + x) / reach);
        }

        return sum / 2;
    }

    // The product has no sphere; the finite volumes have, and are held to this.
    private static double SphereUptake(double time)
    {
        double sum = 0;
        for (var n = 1; n <= 400; n++)
        {
            sum += Math.Exp(-n * n * Math.PI * Math.PI * time) / (n * n);
        }

        return 1 - (6 / (Math.PI * Math.PI) * sum);
    }

    // Nor a face that holds salt back.
    private static double HeldBackUptake(double conductance, double time)
    {
        double left = 0;
        for (var n = 0; n < 40; n++)
        {
            double low = n * Math.PI, high = low + (Math.PI / 2);
            for (var i = 0; i < 100; i++)
            {
                var middle = (low + high) / 2;
                (low, high) = middle * Math.Sin(middle) * (n % 2 == 0 ? 1 : -1) < conductance * Math.Cos(middle) * (n % 2 == 0 ? 1 : -1) ? (middle, high) : (low, middle);
            }

            var square = low * low;
            left += 2 * conductance * conductance * Math.Exp(-square * time) / (square * (square + (conductance * conductance) + conductance));
        }

        return 1 - left;
    }

    private readonly struct Above(double surface) : IFunction
    {
        public double At(double x) => Sheet(0, x) - surface;
    }

    private readonly struct Error(double share) : IFunction
    {
        public double At(double x) => ErrorFunction.Erf(x) - share;
    }
}
