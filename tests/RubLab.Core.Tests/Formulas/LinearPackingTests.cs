using CsCheck;
using RubLab.Core.Formulas;
using RubLab.Core.Tests.Published;

namespace RubLab.Core.Tests.Formulas;

public sealed class LinearPackingTests
{
    private const double LastBits = 1e-12;

    private static readonly List<PublishedCase> Cases = PublishedCase.Read("packing.csv");

    // Few sizes, so that equal ones are common.
    private static readonly Gen<PackingComponent[]> Blends = Gen.Select(
        Gen.Double[0.01, 1], Gen.Double[0.3, 0.8], Gen.OneOf(Gen.Double[1, 5000], Gen.Int[1, 3].Select(i => i * 100.0)),
        (volume, packing, size) => new PackingComponent(volume, packing, size)).Array[1, 6].Select(Whole);

    public static TheoryData<string> Ids => new(Cases.Select(c => c.Id));

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_mix_of_two_sizes_packs_as_the_published_model_says(string id)
    {
        var published = Cases.Single(c => c.Id == id);
        double coarse = published.Input("coarse_volume"), packing = published.Input("packing");

        published.AssertIs(1 / LinearPacking.SpecificVolume(
            [new(coarse, packing, 1000), new(1 - coarse, packing, 1000 * published.Input("size_ratio"))]));
    }

    [Fact]
    public void One_powder_is_as_dense_as_itself() => Law.Holds(Blends, 2_000, blend =>
        Assert.Equal(1 / blend[0].Packing, LinearPacking.SpecificVolume([blend[0] with { SolidVolume = 1 }]), LastBits));

    [Fact]
    public void Grains_of_one_size_mix_ideally() => Law.Holds(Blends, 5_000, blend =>
    {
        var even = blend.Select(c => c with { SizeMicrometres = 300 }).ToArray();

        Assert.Equal(LinearPacking.IdealVolume(even), LinearPacking.SpecificVolume(even), 1e-11);
    });

    [Fact]
    public void A_mix_never_takes_more_room_than_its_powders_side_by_side() => Law.Holds(Blends, 20_000, blend =>
    {
        var volume = LinearPacking.SpecificVolume(blend);

        Assert.InRange(volume, 1, LinearPacking.IdealVolume(blend) * (1 + LastBits));
    });

    [Fact]
    public void The_order_of_the_powders_does_not_matter() =>
        Law.Holds(Blends.SelectMany(b => Gen.Shuffle(b).Select(s => (b, s))), 5_000, pair =>
            Assert.Equal(LinearPacking.SpecificVolume(pair.b), LinearPacking.SpecificVolume(pair.s), 1e-11));

    [Fact]
    public void A_powder_told_as_two_halves_is_the_same_powder() => Law.Holds(Blends, 5_000, blend =>
    {
        var half = blend[0] with { SolidVolume = blend[0].SolidVolume / 2 };

        Assert.Equal(LinearPacking.SpecificVolume(blend), LinearPacking.SpecificVolume([half, half, .. blend[1..]]), 1e-11);
    });

    [Fact]
    public void Dust_in_the_voids_of_boulders_packs_as_Furnas_has_it()
    {
        // 1931: the best share of coarse is 0.714286 at a packing of 0.6 for both, and the mix then packs to 0.84.
        var volume = LinearPacking.SpecificVolume([new(0.6 / 0.84, 0.6, 1e9), new(1 - (0.6 / 0.84), 0.6, 1)]);

        Assert.Equal(0.84, 1 / volume, 1e-6);
    }

    private static PackingComponent[] Whole(PackingComponent[] parts)
    {
        var sum = parts.Sum(p => p.SolidVolume);
        return [.. parts.Select(p => p with { SolidVolume = p.SolidVolume / sum })];
    }
}
