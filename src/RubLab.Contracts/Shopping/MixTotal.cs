namespace RubLab.Contracts.Shopping;

/// <summary>What all sheets need of one ingredient in one form.</summary>
internal sealed record MixTotal(string Ingredient, string Form)
{
    /// <summary>Whole weighing steps summed, in grams.</summary>
    public double Grams { get; set; }
}
