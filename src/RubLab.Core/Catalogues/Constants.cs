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

    /// <summary>Taken where the density of a cut's raw meat is not known.</summary>
    public required double RawMeatDensityKilogramsPerCubicMetre { get; init; }

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
}
