using RubLab.Storage.Formulas;

namespace RubLab.Storage.Tests.Sqlite;

public sealed class SqliteOpeningTests : IDisposable
{
    private readonly TemporaryDirectory _directory = new();

    private string FilePath => _directory.At("rublab.db");

    public void Dispose() => _directory.Dispose();

    [Fact]
    public async Task A_missing_directory_is_made_whatever_its_letters()
    {
        var path = _directory.At("кухня & 烤肉 🔥", "it's; Mode=Memory", "my \"rubs\" 100% #1?.db");

        await SqliteFile.WriteAsync(path);

        Assert.True(new FileInfo(path).Length > 0);
        await using var again = await Database.OpenAsync(path, TimeProvider.System);
        Assert.Equal(40, await SqliteFile.CountFormulasAsync(again));
    }

    [Fact]
    public async Task Reopening_keeps_the_data()
    {
        await SqliteFile.WriteAsync(FilePath);

        await using var again = await Database.OpenAsync(FilePath, TimeProvider.System);
        Assert.Equal(40, await SqliteFile.CountFormulasAsync(again));
    }

    [Fact]
    public async Task A_closed_database_is_a_single_file()
    {
        await SqliteFile.WriteAsync(FilePath);

        Assert.Equal([FilePath], Directory.GetFiles(Path.GetDirectoryName(FilePath)!));
    }

    [Fact]
    public async Task What_a_crashed_server_had_committed_is_there_when_it_starts_again()
    {
        var crashed = _directory.At("crashed.db");
        await using (var database = await Database.OpenAsync(FilePath, TimeProvider.System))
        {
            await SqliteFile.FillAsync(database);
            File.Copy(FilePath, crashed);
            File.Copy(FilePath + "-wal", crashed + "-wal");
        }

        await using var again = await Database.OpenAsync(crashed, TimeProvider.System);
        Assert.Equal(40, await SqliteFile.CountFormulasAsync(again));
    }

    [Fact]
    public async Task An_empty_file_becomes_a_database()
    {
        await File.WriteAllBytesAsync(FilePath, []);

        await SqliteFile.WriteAsync(FilePath);

        Assert.True(new FileInfo(FilePath).Length > 0);
    }

    [Fact]
    public async Task A_relative_path_is_taken_from_the_working_directory()
    {
        var relative = Path.GetRelativePath(Environment.CurrentDirectory, FilePath);

        await using var database = await Database.OpenAsync(relative, TimeProvider.System);

        Assert.Equal(FilePath, database.Location);
        Assert.True(File.Exists(FilePath));
    }

    [Fact]
    public async Task The_file_and_its_new_directory_are_for_their_owner_alone()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var path = _directory.At("data", "rublab.db");
        await using var database = await Database.OpenAsync(path, TimeProvider.System);
        await SqliteFile.FillAsync(database);

        const UnixFileMode Owner = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        Assert.Equal(Owner, File.GetUnixFileMode(path));
        Assert.Equal(Owner, File.GetUnixFileMode(path + "-wal"));
        Assert.Equal(Owner | UnixFileMode.UserExecute, File.GetUnixFileMode(Path.GetDirectoryName(path)!));
    }

    [Fact]
    public async Task Several_databases_opened_on_one_new_file_at_once_all_work()
    {
        for (var round = 0; round < 5; round++)
        {
            var path = _directory.At($"round {round}", "rublab.db");
            var opened = await Task.WhenAll(
                Enumerable.Range(0, 4).Select(_ => Task.Run(() => Database.OpenAsync(path, TimeProvider.System))));
            for (var i = 0; i < opened.Length; i++)
            {
                await using var work = await opened[i].BeginAsync(Intent.Write);
                await work.Kitchens.EnsureAsync("quay", "Quay kitchen");
                await work.Formulas.CreateAsync("quay", $"rub-{i}", new FormulaContent("Rub", "rub", "{}"));
                await work.CommitAsync();
            }

            Assert.Equal(opened.Length, await SqliteFile.CountFormulasAsync(opened[0]));
            foreach (var database in opened)
            {
                await database.DisposeAsync();
            }
        }
    }

    [Fact]
    public async Task A_database_in_use_can_be_opened_by_another()
    {
        await using var first = await Database.OpenAsync(FilePath, TimeProvider.System);
        await using var holder = await first.BeginAsync(Intent.Write);
        await holder.Kitchens.EnsureAsync("quay", "Quay kitchen");

        await using var second = await Database.OpenAsync(FilePath, TimeProvider.System);
        await using var reader = await second.BeginAsync(Intent.Read);

        Assert.Null(await reader.Kitchens.GetAsync("quay"));
    }
}
