namespace RubLab.Contracts.Outputs;

/// <summary>Where the parts of a plot stand. Words keep their size, so a narrow plot breaks them into more lines.</summary>
internal sealed record PlotFrame
{
    /// <summary>As on paper or on a desk.</summary>
    public static PlotFrame Wide { get; } = new()
    {
        Width = 640, Left = 64, Right = 616, Top = 84, Bottom = 340, WordsFrom = 64, IsNarrow = false, MostTicks = 8, MostLetters = 86,
    };

    /// <summary>As on a phone held upright.</summary>
    public static PlotFrame Narrow { get; } = new()
    {
        Width = 336, Left = 44, Right = 326, Top = 124, Bottom = 364, WordsFrom = 6, IsNarrow = true, MostTicks = 5, MostLetters = 42,
    };

    public required int Width { get; init; }

    /// <summary>The left end of the axes; <see cref="Right"/>, <see cref="Top"/> and <see cref="Bottom"/> likewise.</summary>
    public required double Left { get; init; }

    public required double Right { get; init; }

    public required double Top { get; init; }

    public required double Bottom { get; init; }

    /// <summary>Where lines of words begin.</summary>
    public required double WordsFrom { get; init; }

    public required bool IsNarrow { get; init; }

    /// <summary>Of the axis across.</summary>
    public required int MostTicks { get; init; }

    /// <summary>In a line of small words.</summary>
    public required int MostLetters { get; init; }
}
