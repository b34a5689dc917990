using System.Globalization;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Serving;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Yields;

/// <summary>Notes where a kitchen's own cooking records stand in a pile.</summary>
internal static class OwnYieldFindings
{
    public static void Notice(Pile pile, IReadOnlyList<PileLineRequest?> asked, FindingLog findings)
    {
        for (var i = 0; i < pile.Lines.Count; i++)
        {
            if (asked[i]!.CookYield is null && pile.Lines[i].Cut.OwnCookYield is { } own)
            {
                PlanFindings.NoticeOwn(pile.Lines[i].Id, pile.Lines[i].Cut, own, string.Create(CultureInfo.InvariantCulture, $"/pile/{i}"), findings);
            }
        }
    }
}
