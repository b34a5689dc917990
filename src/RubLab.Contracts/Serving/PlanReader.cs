using RubLab.Contracts.Reading;
using RubLab.Contracts.Shopping;
using RubLab.Contracts.Yields;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;
using RubLab.Core.Serving;
using RubLab.Core.Yields;

namespace RubLab.Contracts.Serving;

/// <summary>Reads guests and a menu, noting every fault.</summary>
internal sealed class PlanReader(Catalogue catalogue, MoneyReader money)
{
    // Shares written to two decimals, such as three of 33.33, sum to 100 all the same.
    private const double ShareTolerancePercent = 0.05;

    private readonly HashSet<string> _ids = new(StringComparer.Ordinal);

    /// <summary>What a plan is computed from; null where something is wrong.</summary>
    public PlanRequest? Read(PurchasePlanRequest request, Place at)
    {
        var before = at.Log.Count;
        var guests = Guests(request.Guests, at.At("guests"));
        var menu = Menu(request.Menu, at.At("menu"));
        var reserve = Reader.Percent(request.Reserve, at.At("reserve"), Bounds.Percent) ?? 0;
        var end = Vocabulary.PurchaseEnds.Read(request.BuyFor, at.At("buyFor"), PurchaseEnd.Typical);
        var unit = Vocabulary.BoughtIn.Read(request.BoughtIn, at.At("boughtIn"), BoughtIn.Kilogram);
        return at.Log.Count > before ? null : new PlanRequest
        {
            Guests = guests,
            Menu = menu,
            ReservePercent = reserve,
            End = end.GetValueOrDefault(),
            UnitGrams = UnitTable.Get(Vocabulary.BoughtIn[unit.GetValueOrDefault()]).Factor,
            UnitStep = catalogue.Constants.BuyingGuideStep,
        };
    }

    private List<GuestGroup> Guests(IReadOnlyList<GuestGroupRequest?>? groups, Place at)
    {
        var read = new List<GuestGroup>();
        if (!Listed.Holds(groups, PlanRequest.MostGroups, "group of guests", "groups of guests", at))
        {
            return read;
        }

        long sum = 0;
        for (var i = 0; i < groups!.Count; i++)
        {
            if (groups[i] is not { } group)
            {
                Reader.Missing(at.At(i));
                continue;
            }

            var portion = AppetiteReader.Grams(group.Portion, group.Appetite, catalogue.Serving, at.At(i));
            if (group.Count is not { } count)
            {
                Reader.Missing(at.At(i).At("count"));
            }
            else if (count is < 1 or > PlanRequest.MostGuests)
            {
                at.At(i).At("count").Fault(
                    "out-of-range", $"{count} is out of range: from 1 to {PlanRequest.MostGuests} guests.",
                    ("value", (double)count), ("lowest", 1d), ("highest", (double)PlanRequest.MostGuests));
            }
            else
            {
                sum += count;
                read.Add(new GuestGroup(count, portion ?? 1));
            }
        }

        if (sum > PlanRequest.MostGuests)
        {
            at.Fault("too-many", $"At most {PlanRequest.MostGuests} guests; these are {sum}.", ("most", (double)PlanRequest.MostGuests), ("count", (double)sum));
        }

        return read;
    }

    private List<MenuLine> Menu(IReadOnlyList<MenuLineRequest?>? lines, Place at)
    {
        var read = new List<MenuLine>();
        if (!Listed.Holds(lines, SheetRequest.MostPileLines, "cut", "cuts", at))
        {
            return read;
        }

        double sum = 0;
        var isWhole = true;
        for (var i = 0; i < lines!.Count; i++)
        {
            if (lines[i] is not { } line)
            {
                Reader.Missing(at.At(i));
                isWhole = false;
                continue;
            }

            var share = Share(line, lines.Count == 1, at.At(i).At("share"));
            isWhole &= share is not null;
            sum += share ?? 0;
            if (Line(line, share ?? 1, at.At(i)) is { } one)
            {
                read.Add(one);
            }
        }

        if (isWhole && Math.Abs(sum - 100) > ShareTolerancePercent)
        {
            at.Fault("shares-not-whole", $"The shares sum to {Figures.Read(sum, 100)} %, not to 100.", ("sum", Math.Round(sum, 3)));
        }

        return read.ConvertAll(line => line with { SharePercent = line.SharePercent / sum * 100 });
    }

    private static double? Share(MenuLineRequest line, bool isAlone, Place at)
    {
        if (line.Share is null && isAlone)
        {
            return 100;
        }

        if (line.Share is null)
        {
            Reader.Missing(at);
        }

        return Reader.Percent(line.Share, at, Bounds.SharePercent);
    }

    private MenuLine? Line(MenuLineRequest line, double share, Place at)
    {
        var before = at.Log.Count;
        var cut = Lookup.Cut(line.Cut, catalogue, at.At("cut"));
        var id = line.Id is null ? cut?.Id : Names.Id(line.Id, at.At("id"));
        if (id is not null && !_ids.Add(id))
        {
            at.At("id").Fault("duplicate-id", $"'{id}' is already a line of this menu; give each line its own id.", ("value", id));
        }

        var choice = Choice(line, cut, at);
        var piece = Reader.Amount(line.PieceWeight, at.At("pieceWeight"), Bounds.PieceGrams, isRequired: false, Dimension.Mass);
        var price = money.Read(line.Price, at.At("price"));
        var pieceGrams = CountedBand.Of(piece is { } grams ? Band.Exact(grams) : null, cut is null ? null : catalogue.Serving.PieceGramsOf(cut.Id));
        if (line.Price is { Per: null } && pieceGrams is null && cut is not null && line.PieceWeight is null)
        {
            at.At("price").Fault("needs-other", "A price without per is for one piece: give pieceWeight, or what weight the price is for.");
        }

        return at.Log.Count > before || cut is null || choice is null ? null : new MenuLine
        {
            Id = id!, Cut = cut, SharePercent = share, Choice = choice, PieceGrams = pieceGrams, Price = price,
        };
    }

    private YieldChoice? Choice(MenuLineRequest line, Cut? cut, Place at)
    {
        var before = at.Log.Count;
        var asked = new YieldRequest
        {
            Method = Names.Id(line.Method, at.At("method")),
            TrimPercent = Reader.PercentBand(line.TrimLoss, at.At("trimLoss"), Bounds.PercentOfPart),
            CookYieldPercent = Reader.PercentBand(line.CookYield, at.At("cookYield"), Bounds.YieldPercent),
            BonePercent = Reader.PercentBand(line.Bone, at.At("bone"), Bounds.PercentOfPart),
            ByPurchaseYield = Vocabulary.PlannedBy.Read(line.PlannedBy, at.At("plannedBy")) == PlannedBy.PurchaseYield,
        };
        if (asked.ByPurchaseYield && (line.TrimLoss ?? line.CookYield ?? line.Bone) is not null)
        {
            at.At("plannedBy").Fault("one-or-the-other", "A purchase yield has trim, cooking and bone within: leave trimLoss, cookYield and bone out.");
        }

        return cut is null || at.Log.Count > before ? null : YieldReader.Choose(cut, asked, catalogue, at);
    }
}
