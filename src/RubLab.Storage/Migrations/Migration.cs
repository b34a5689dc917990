using System.Globalization;

namespace RubLab.Storage.Migrations;

/// <summary>One numbered SQL script embedded in this assembly; number 0 is the ledger and runs before every other.</summary>
internal sealed record Migration(long Number, string Name, string Sql)
{
    /// <summary>The scripts of one engine in order of their numbers.</summary>
    /// <exception cref="InvalidOperationException">A number is missing or used twice.</exception>
    public static IReadOnlyList<Migration> ReadAll(string folder)
    {
        var assembly = typeof(Migration).Assembly;
        var prefix = $"{typeof(Migration).Namespace}.{folder}.";
        var found = assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(prefix, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(name => Read(assembly.GetManifestResourceStream(name)!, Path.GetFileNameWithoutExtension(name[prefix.Length..])))
            .ToList();
        for (var i = 0; i < found.Count; i++)
        {
            if (found[i].Number != i)
            {
                throw new InvalidOperationException($"Migration {i} of {folder} is missing or there twice.");
            }
        }

        return found;
    }

    private static Migration Read(Stream stream, string file)
    {
        using var reader = new StreamReader(stream);
        var dash = file.IndexOf('-', StringComparison.Ordinal);
        return new Migration(long.Parse(file.AsSpan(0, dash), NumberStyles.None, CultureInfo.InvariantCulture), file[(dash + 1)..], reader.ReadToEnd());
    }
}
