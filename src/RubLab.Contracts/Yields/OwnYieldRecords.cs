using System.Globalization;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Yields;

namespace RubLab.Contracts.Yields;

/// <summary>Reads and writes the cooking yields a kitchen records itself.</summary>
public static class OwnYieldRecords
{
    public const int MostRecords = 200;

    /// <summary>The yields of some records of a cut.</summary>
    public static Result<IReadOnlyList<OwnYield>> Check(OwnYieldRequest request, Cut cut, Catalogue catalogue)
    {
        var log = new FaultLog();
        var at = log.Root.At("records");
        var records = request.Records;
        if (!Listed.Holds(records, MostRecords, "record", "records", at))
        {
            return log.ResultOf<IReadOnlyList<OwnYield>>(null);
        }

        var read = new List<CookRecord>(records.Count);
        for (var i = 0; i < records.Count; i++)
        {
            if (records[i] is not { } record)
            {
                Reader.Missing(at.At(i));
            }
            else if (Read(record, at.At(i)) is { } cook)
            {
                read.Add(cook);
            }
        }

        return log.ResultOf(log.IsClean ? OwnYields.Of(cut, read, catalogue) : null);
    }

    /// <summary>The answer for a cut's stored records.</summary>
    public static OwnYieldResponse From(IReadOnlyList<OwnYield> yields, OwnYieldRequest request, string cut, long revision, string updatedAt) => new()
    {
        Cut = cut,
        Revision = revision,
        Yields = yields.Select(From).ToList(),
        Records = request.Records!.Select(r => From(r!)).ToList(),
        UpdatedAt = updatedAt,
    };

    private static CookRecord? Read(CookRecordRequest record, Place at)
    {
        var before = at.Log.Count;
        ReadDate(record.Date, at.At("date"));
        var method = Names.Id(record.Method, at.At("method"));
        var weightIs = record.BeforeIs is null ? WeightBasis.Green : Vocabulary.Weights.Read(record.BeforeIs, at.At("beforeIs"));
        var trim = Reader.Percent(record.TrimLoss, at.At("trimLoss"), Bounds.PercentOfPart);
        if (record.TrimLoss is not null && weightIs == WeightBasis.Green)
        {
            at.At("trimLoss").Fault("trim-on-green", "Green weight is after trimming: there is no trim loss to take off it.");
        }

        var weight = Reader.Amount(record.Before, at.At("before"), Bounds.MeatGrams, isRequired: true, Dimension.Mass);
        var after = Reader.Amount(record.After, at.At("after"), Bounds.MeatGrams, isRequired: true, Dimension.Mass);
        if (weight is not { } raw || after is not { } cooked)
        {
            return null;
        }

        var green = raw * (1 - ((trim ?? 0) / 100));
        var percent = cooked / green * 100;
        if (!Bounds.YieldPercent.Holds(percent))
        {
            at.At("after").Fault(
                "yield-out-of-range",
                $"This is {Figures.Read(percent, percent > Bounds.YieldPercent.Highest ? Bounds.YieldPercent.Highest : Bounds.YieldPercent.Lowest)} % of the weight before: a yield is from {Bounds.YieldPercent.Lowest} up to {Bounds.YieldPercent.Highest} %.",
                ("value", Rounded.Estimate(percent)), ("lowest", Bounds.YieldPercent.Lowest), ("highest", Bounds.YieldPercent.Highest));
        }

        return at.Log.Count > before ? null : new CookRecord(method, green, cooked, weightIs == WeightBasis.Purchase && trim is null);
    }

    private static void ReadDate(string? date, Place at)
    {
        if (date is null)
        {
            Reader.Missing(at);
        }
        else if (!DateOnly.TryParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
        {
            at.Fault("bad-date", $"'{Shown.Text(date)}' is not a day written as 2026-03-14.", ("value", Shown.Text(date)));
        }
    }

    private static OwnYieldFigure From(OwnYield own) => new()
    {
        Method = own.Method,
        WeightIs = Vocabulary.Weights[own.IsOfPurchase ? WeightBasis.Purchase : WeightBasis.Green],
        Count = own.Count,
        MeanPercent = Rounded.Weight(own.MeanPercent),
        SpreadPercent = own.SpreadPercent is { } spread ? Rounded.Estimate(spread) : null,
        OwnSharePercent = Rounded.Exact(own.OwnShare * 100),
        Reference = own.ReferencePercent is { } reference ? QuantityBand.From(reference, "%", Rounded.Weight) : null,
        Yield = QuantityBand.From(own.Percent, "%", Rounded.Weight),
        Confidence = Vocabulary.Confidences[own.Citation.Confidence],
    };

    private static CookRecordResponse From(CookRecordRequest record) => new()
    {
        Date = record.Date!,
        Method = record.Method,
        Before = AsSent(record.Before!),
        BeforeIs = record.BeforeIs ?? Vocabulary.Weights[WeightBasis.Green],
        TrimLoss = record.TrimLoss is { } trim ? AsSent(trim) : null,
        After = AsSent(record.After!),
    };

    private static Quantity AsSent(QuantityRequest quantity) => new(quantity.Value!.Value, quantity.Unit!);
}
