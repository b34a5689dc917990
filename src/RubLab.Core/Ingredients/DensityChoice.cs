using RubLab.Core.Sources;

namespace RubLab.Core.Ingredients;

/// <summary>The density a volume is turned into a mass with, and whether the form had to be guessed.</summary>
/// <param name="Form">The form named, or the default one.</param>
/// <param name="Density">None where the form has no density.</param>
/// <param name="SpansForms">No form was named and the forms differ by more than the house's limit: the band
/// covers all of them and the answer asks.</param>
public sealed record DensityChoice(IngredientForm Form, BulkDensity? Density, bool SpansForms)
{
    /// <summary>Chooses for an ingredient and a form that may be unnamed.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="named">The form the person named, or none.</param>
    /// <param name="asksAbovePercent">How far the forms' typical densities may differ (highest over lowest)
    /// before an unnamed form is answered by all of them.</param>
    public static DensityChoice For(Ingredient ingredient, IngredientForm? named, double asksAbovePercent)
    {
        var form = named ?? ingredient.DefaultForm;
        if (named is not null || form.Density is null)
        {
            return new DensityChoice(form, form.Density, SpansForms: false);
        }

        var spanned = form.Density.GramsPerMillilitre;
        double lowest = spanned.Typical, highest = spanned.Typical;
        var confidence = form.Density.Citation.Confidence;
        foreach (var other in ingredient.Forms)
        {
            if (other.Density is { } density)
            {
                spanned = spanned.Spanning(density.GramsPerMillilitre);
                lowest = Math.Min(lowest, density.GramsPerMillilitre.Typical);
                highest = Math.Max(highest, density.GramsPerMillilitre.Typical);
                confidence = (Confidence)Math.Max((int)confidence, (int)density.Citation.Confidence);
            }
        }

        return highest <= lowest * (1 + (asksAbovePercent / 100))
            ? new DensityChoice(form, form.Density, SpansForms: false)
            : new DensityChoice(
                form,
                new BulkDensity(spanned, form.Density.Citation with { Confidence = confidence }, "form"),
                SpansForms: true);
    }
}
