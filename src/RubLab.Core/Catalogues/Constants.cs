using RubLab.Core.Sources;

namespace RubLab.Core.Catalogues;

/// <summary>The single figures of <c>constants.csv</c> that the computations name.</summary>
public sealed record Constants
{
    /// <summary>Sodium in sodium chloride, by mass.</summary>
    public required double SodiumInSodiumChlorideGramsPerGram { get; init; }

    /// <summary>How far the mass in a spoon or cup strays from hand to hand, percent either way.</summary>
    public required double SpoonFillingSpreadPercent { get; init; }

    /// <summary>Forms that differ by more than this are asked for, percent.</summary>
    public required double FormSpreadAsksPercent { get; init; }

    /// <summary>A weighing step above this share of an amount is called coarse, percent.</summary>
    public required double CoarseStepPercent { get; init; }

    /// <summary>A premix asks for no more of its carrier than so many batches take.</summary>
    public required double PremixBatchesMost { get; init; }

    /// <summary>Taken where the density of a cut's raw meat is not known.</summary>
    public required double RawMeatDensityKilogramsPerCubicMetre { get; init; }

    /// <summary>How far a cooking yield published as one figure may lie from it, points of percent either way: an estimate.</summary>
    public required Cited CookYieldSpread { get; init; }

    /// <summary>A layer thinner than so many grains leaves bare meat.</summary>
    public required double LayerGrainsMonolayer { get; init; }

    /// <summary>A layer thicker than so many grains needs a binder or two passes.</summary>
    public required double LayerGrainsBinder { get; init; }

    /// <summary>Grains that differ by more than this ratio part in the shaker.</summary>
    public required double SeparatesSizeRatio { get; init; }

    /// <summary>Pieces whose coverage differs by more than this are named, percent, highest over lowest.</summary>
    public required double CoverageSpreadPercent { get; init; }

    /// <summary>Sugar on the surface scorches above this cooker temperature.</summary>
    public required double SugarScorchTemperatureCelsius { get; init; }

    /// <summary>Where that temperature comes from.</summary>
    public required string SugarScorchSourceId { get; init; }

    /// <summary>A mix with more sugar than this is held against the cooker temperature, percent.</summary>
    public required double SugarScorchSharePercent { get; init; }

    /// <summary>Density of a sauce nobody weighed a cup of, g/mL.</summary>
    public required Cited SauceDensityGramsPerMillilitre { get; init; }

    /// <summary>Weighing error that is too much for a limited additive, percent.</summary>
    public required double CureStepPercent { get; init; }

    /// <summary>Potassium nitrite that is as much nitrite as one of sodium nitrite, by mass.</summary>
    public required double PotassiumPerSodiumNitrite { get; init; }

    /// <summary>Sodium in sodium nitrite, by mass.</summary>
    public required double SodiumInSodiumNitriteGramsPerGram { get; init; }

    /// <summary>Sodium in sodium nitrate, by mass.</summary>
    public required double SodiumInSodiumNitrateGramsPerGram { get; init; }
    /// <summary>So many of a kitchen's own cooking records stand by themselves.</summary>
    public required int OwnYieldFullCount { get; init; }

    /// <summary>How far the yield of one cook strays from the mean, percent either side, two standard deviations.</summary>
    public required double OwnYieldSpreadPercent { get; init; }

    /// <summary>The step purchases by weight go up to, in the unit of purchase.</summary>
    public required double BuyingGuideStep { get; init; }
}
