using System.Globalization;
using RubLab.Contracts.Formulas;
using RubLab.Core.Catalogues;

namespace RubLab.Api.Formulas;

/// <summary>Stored documents as answers.</summary>
internal static class FormulaDocuments
{
    /// <summary>The answer for a stored document; it was sound when stored and ids are never removed.</summary>
    public static FormulaResponse Answer(string id, long revision, string document, DateTimeOffset updatedAt, Catalogue catalogue)
    {
        var authored = StoredFormulas.Parse(document);
        var formula = FormulaAnswers.Stored(authored, catalogue)
            ?? throw new InvalidDataException($"The stored formula {id}, revision {revision}, is not sound under data {catalogue.Version}.");
        return FormulaAnswers.From(formula, authored, id, revision, Time(updatedAt), catalogue);
    }

    /// <summary>A moment in UTC to the millisecond.</summary>
    public static string Time(DateTimeOffset moment) =>
        moment.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);
}
