using RubLab.Contracts.Reading;
using RubLab.Core.Faults;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>The members that only a soak has, in base units.</summary>
internal sealed record SoakReader
{
    public required double? LiquidGrams { get; init; }

    public required double? LiquidMillilitres { get; init; }

    public required double MeatWaterGramsPerKilogram { get; init; }

    /// <summary>Bone taken from the cut's own figure, percent; none where the water was given for the whole weight.</summary>
    public required Band? BonePercent { get; init; }

    public required double SaltInMeatGramsPerKilogram { get; init; }

    public required double? Minutes { get; init; }

    public required double? ThicknessMillimetres { get; init; }

    public required bool IsCylinder { get; init; }

    public required double? SquareMetresPerSecond { get; init; }

    public required double? VesselMillilitres { get; init; }

    public static SoakReader? Read(BrineRequest request, Cut? cut, Place at)
    {
        var before = at.Log.Count;
        Unit? unit = null;
        double? liquid = null;
        if (request.Liquid is { } authored)
        {
            liquid = Reader.Authored(authored, at.At("liquid"), _ => BoundsOfBrines.Liquid, out unit, Dimension.Mass, Dimension.Volume);
            if (request.Dose is not null)
            {
                at.At("liquid").Fault("one-or-the-other", "Give either the liquid or the dose.");
            }
        }

        var water = Reader.Percent(request.MeatWater, at.At("meatWater"), BoundsOfBrines.MeatWaterPercent);
        if (request.Cut is null && request.MeatWater is null)
        {
            at.At("cut").Fault("required", "A soak needs the meat's own water: name the cut, or give meatWater.");
        }
        else if (request.MeatWater is null && cut is { Composition.WaterGramsPer100Grams: null } or { Composition: null } && water is null)
        {
            at.At("meatWater").Fault("required", $"No water content is on record for {cut!.Name}: give meatWater.");
        }

        var salt = Reader.Amount(request.SaltInMeat, at.At("saltInMeat"), BoundsOfBrines.SaltInMeatGramsPerKilogram, isRequired: false, Dimension.Ratio);
        var minutes = Reader.Amount(request.Time, at.At("time"), BoundsOfBrines.Minutes, isRequired: false, Dimension.Time);
        var thickness = Reader.Amount(request.Thickness, at.At("thickness"), Bounds.ThicknessMillimetres, isRequired: false, Dimension.Length);
        var isCylinder = Vocabulary.SoakShapes.Read(request.Shape, at.At("shape"), SoakShape.Slab) == SoakShape.Cylinder;
        if (request is { Shape: not null, Thickness: null })
        {
            at.At("shape").Fault("needs-other", "shape says what thickness is of; give thickness too.");
        }

        var diffusivity = Reader.Amount(
            request.Diffusivity, at.At("diffusivity"), BoundsOfBrines.SquareMetresPerSecond, isRequired: false, Dimension.Diffusivity);
        var vessel = Reader.Amount(request.Vessel, at.At("vessel"), BoundsOfBrines.Liquid, isRequired: false, Dimension.Volume);
        if (request is { Time: not null, Thickness: null } && (request.Cut is null || cut is { Shape: null }))
        {
            at.At("thickness").Fault("required", "How far salt has to go is not known without a cut that has a shape: give thickness.");
        }

        if (request is { Vessel: not null } && (request.Cut is null || cut is { Shape: null }))
        {
            at.At("vessel").Fault("needs-other", "The meat's volume is not known without a cut that has a shape.");
        }

        if (at.Log.Count > before || (water ?? cut?.Composition?.WaterGramsPer100Grams) is not { } percent)
        {
            return null;
        }

        // The cut's own figure is of its edible part: bone holds none of that water.
        var bone = water is null ? cut?.BonePercent?.Band : null;
        var inBase = liquid is { } value ? unit!.ToBase(value) : (double?)null;
        return new SoakReader
        {
            LiquidGrams = unit?.Dimension == Dimension.Mass ? inBase : null,
            LiquidMillilitres = unit?.Dimension == Dimension.Volume ? inBase : null,
            MeatWaterGramsPerKilogram = percent * 10 * (1 - ((bone?.Typical ?? 0) / 100)),
            BonePercent = bone,
            SaltInMeatGramsPerKilogram = salt ?? 0,
            Minutes = minutes,
            ThicknessMillimetres = thickness,
            IsCylinder = isCylinder,
            SquareMetresPerSecond = diffusivity,
            VesselMillilitres = vessel,
        };
    }
}
