namespace RubLab.Contracts.Outputs;

/// <summary>What a ratio stands on, in words.</summary>
internal static class BaseWords
{
    /// <summary>The meat, or its surface.</summary>
    /// <param name="ratioBase">The word of the wire, or <c>purchase</c>.</param>
    public static string Of(string ratioBase) => ratioBase switch
    {
        "cooked" => "cooked meat",
        "portion" => "served meat",
        "purchase" => "meat as bought",
        "area" => "surface",
        _ => "green meat",
    };

    /// <summary>How much of it one ratio is for: <c>1 kg of green meat</c>.</summary>
    public static string OneOf(string ratioBase) => ratioBase == "area" ? "100 cm2 of surface" : "1 kg of " + Of(ratioBase);
}
