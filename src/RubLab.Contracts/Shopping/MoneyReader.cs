using System.Globalization;
using RubLab.Contracts.Reading;
using RubLab.Core.Faults;
using RubLab.Core.Quantities;
using RubLab.Core.Serving;
using RubLab.Core.Shopping;

namespace RubLab.Contracts.Shopping;

/// <summary>Reads sums of money: the first currency named is that of the whole request.</summary>
public sealed class MoneyReader(ServingReference reference)
{
    /// <summary>The largest sum.</summary>
    public const decimal Most = 1_000_000_000m;

    /// <summary>The currency of the request; none where no money was named.</summary>
    public Currency? Currency { get; private set; }

    public decimal? Read(MoneyRequest? money, Place at) => money is null ? null : Read(money.Amount, money.Currency, at);

    public Price? Read(PriceRequest? price, Place at)
    {
        if (price is null)
        {
            return null;
        }

        var amount = Read(price.Amount, price.Currency, at);
        var per = Reader.Amount(price.Per, at.At("per"), Bounds.PriceGrams, isRequired: false, Dimension.Mass);
        return amount is { } known && (price.Per is null || per is not null) ? new Price(known, per) : null;
    }

    private decimal? Read(decimal? amount, string? code, Place at)
    {
        var isOfRequest = ReadCurrency(code, at.At("currency"));
        if (amount is not { } value)
        {
            Reader.Missing(at.At("amount"));
            return null;
        }

        if (value is >= 0 and <= Most)
        {
            return isOfRequest ? value : null;
        }

        at.At("amount").Fault(
            "out-of-range", string.Create(CultureInfo.InvariantCulture, $"{value} is out of range: from 0 up to {Most}."),
            ("value", (double)value), ("lowest", 0d), ("highest", (double)Most));
        return null;
    }

    private bool ReadCurrency(string? code, Place at)
    {
        if (code is null)
        {
            Reader.Missing(at);
            return false;
        }

        if (!reference.TryFindCurrency(code, out var currency))
        {
            at.Fault("unknown-currency", $"'{Shown.Text(code)}' is not a currency code of ISO 4217, such as EUR or USD.", ("value", Shown.Text(code)));
            return false;
        }

        Currency ??= currency;
        if (Currency == currency)
        {
            return true;
        }

        at.Fault(
            "mixed-currencies", $"This is in {currency.Code}, and the request began in {Currency.Code}: use one currency throughout.",
            ("value", currency.Code), ("currency", Currency.Code));
        return false;
    }
}
