using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;

namespace RubLab.Contracts.Outputs;

/// <summary>What goes on one piece as one sentence, for a cook whose hands are on the meat.</summary>
public static class ReadAloud
{
    /// <summary>The sentence.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="line">Name of its line of the pile.</param>
    /// <param name="treatment">Name of the treatment.</param>
    public static string Of(SheetPieceResponse piece, string line, string treatment)
    {
        var label = piece.Label is null ? "" : $" {piece.Label},";
        return $"Piece {piece.Number}, {line},{label} {Spoken(piece.GreenWeight)} green: {Spoken(piece.Amount)} of {treatment}{Until(piece)}.";
    }

    private static string Until(SheetPieceResponse piece) =>
        piece.TargetWeight is { } target ? $", until the scale shows {Spoken(target)}" : "";

    private static string Spoken(Quantity mass)
    {
        var unit = mass.Unit switch { "mg" => "milligram", "g" => "gram", "kg" => "kilogram", "oz" => "ounce", "lb" => "pound", var other => other };
        return $"{PlainNumber.Of(mass.Value)} {unit}{(mass.Value == 1 ? "" : "s")}";
    }
}
