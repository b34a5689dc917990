using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using RubLab.Contracts.Listing;
using RubLab.Core.Faults;

namespace RubLab.Api.Http;

/// <summary>The query of every list: how many, and from where.</summary>
public sealed record ListQuery
{
    public const int Default = 50;
    public const int Most = 200;

    /// <summary>How many items, 1 to 200; 50 if left out.</summary>
    [FromQuery(Name = "limit")]
    public string? Limit { get; init; }

    /// <summary>The <c>next</c> of the page before.</summary>
    [FromQuery(Name = "cursor")]
    public string? Cursor { get; init; }

    /// <summary>Reads both; faults go into the log.</summary>
    public (int Limit, string[]? Position) Read(Cursors cursors, string list, FaultLog log)
    {
        var limit = Default;
        if (Limit is not null
            && !(int.TryParse(Limit, NumberStyles.None, CultureInfo.InvariantCulture, out limit) && limit is >= 1 and <= Most))
        {
            log.Root.At("limit").Fault("out-of-range", $"limit is a whole number from 1 to {Most}.", ("lowest", 1d), ("highest", (double)Most));
        }

        string[]? position = null;
        if (Cursor is not null && !cursors.TryRead(Cursor, list, out position))
        {
            log.Root.At("cursor").Fault("bad-cursor", "This is not a cursor of this list; start without one.");
        }

        return (limit, position);
    }

    /// <summary>A page of a list held in memory, in its order, found again by id.</summary>
    public static ListResponse<TOut> Page<TIn, TOut>(
        IReadOnlyList<TIn> all, string list, int limit, string[]? position, Func<TIn, string> id, Func<TIn, TOut> write, Cursors cursors)
    {
        var start = 0;
        if (position is not null)
        {
            while (start < all.Count && id(all[start]) != position[0])
            {
                start++;
            }

            start++;
        }

        var page = all.Skip(start).Take(limit).ToList();
        var next = start + page.Count < all.Count && page.Count > 0 ? cursors.Write(list, id(page[^1])) : null;
        return new ListResponse<TOut>(page.Select(write).ToList(), next);
    }
}
