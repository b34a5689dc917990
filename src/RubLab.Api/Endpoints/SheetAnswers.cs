using System.Security.Cryptography;
using System.Text;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Outputs;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;

namespace RubLab.Api.Endpoints;

/// <summary>A batch sheet in each of its representations.</summary>
internal static class SheetAnswers
{
    private const int ShortPieceCount = 1000;

    // Nothing but the document's own style, named by its hash.
    private static readonly string PrintedPolicy =
        $"default-src 'none'; style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(PrintedStyle.Css)))}'; "
        + "base-uri 'none'; frame-ancestors 'none'; form-action 'none'";

    public static IResult Json(HttpContext http, BatchSheetResponse sheet) => sheet.PieceCount <= ShortPieceCount
        ? Answers.ComputedShort(http, sheet, RubLabJson.Default.BatchSheetResponse)
        : Answers.Computed(http, sheet, RubLabJson.Default.BatchSheetResponse);

    public static IResult Table(HttpContext http, BatchSheetResponse sheet, SheetTable table)
    {
        http.Response.Headers.ContentDisposition = $"attachment; filename=\"batch-sheet-{SheetTables.All[table]}.csv\"";
        return Answers.ComputedText(http, "text/csv; charset=utf-8", SheetTables.Records(sheet, table));
    }

    public static IResult Printed(HttpContext http, BatchSheetResponse sheet, Catalogue catalogue)
    {
        http.Response.Headers.ContentSecurityPolicy = PrintedPolicy;
        return Answers.ComputedText(http, "text/html; charset=utf-8", PrintedSheet.Parts(sheet, catalogue));
    }
}
