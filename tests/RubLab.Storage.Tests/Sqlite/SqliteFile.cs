using Dapper;
using Microsoft.Data.Sqlite;
using RubLab.Storage.Formulas;

namespace RubLab.Storage.Tests.Sqlite;

/// <summary>Database files for the tests that look at the file itself.</summary>
internal static class SqliteFile
{
    /// <summary>A closed database with one kitchen and some formulas, several pages long.</summary>
    public static async Task WriteAsync(string path)
    {
        await using var database = await Database.OpenAsync(path, TimeProvider.System);
        await FillAsync(database);
    }

    public static async Task FillAsync(Database database)
    {
        await using var work = await database.BeginAsync(Intent.Write);
        await work.Kitchens.EnsureAsync("quay", "Quay kitchen");
        for (var i = 0; i < 40; i++)
        {
            await work.Formulas.CreateAsync("quay", $"rub-{i}", new FormulaContent($"Rub {i}", "rub", new string('x', 2000)));
        }

        await work.CommitAsync();
    }

    public static async Task ExecuteAsync(string path, string sql)
    {
        await using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        await connection.ExecuteAsync(sql);
    }

    public static async Task<int> CountFormulasAsync(Database database)
    {
        await using var work = await database.BeginAsync(Intent.Read);
        return (await work.Formulas.ListAsync("quay", 1000)).Count;
    }
}
