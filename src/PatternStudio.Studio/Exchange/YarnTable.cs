using System.Globalization;
using System.Text.RegularExpressions;
using CsvHelper;
using CsvHelper.Configuration;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Exchange;

/// <summary>A line of a yarn table as it would be taken in.</summary>
/// <param name="Number">1-based line of the table, the titles counted.</param>
/// <param name="Yarn">Null where nothing can be made of the line.</param>
/// <param name="Balls">Whole balls in the cupboard; null where the table does not say.</param>
/// <param name="Faults">Why it is not taken, in sentences; empty where it is.</param>
public sealed record YarnLine(int Number, YarnDetails? Yarn, int? Balls, string DyeLot, IReadOnlyList<string> Faults)
{
    /// <summary>True where it can be taken.</summary>
    public bool IsTaken => Faults.Count == 0;
}

/// <summary>A yarn table looked through.</summary>
/// <param name="Columns">The table's own titles that were understood.</param>
/// <param name="Passed">Its titles that were not.</param>
public sealed record YarnTable(IReadOnlyList<YarnLine> Lines, IReadOnlyList<string> Columns, IReadOnlyList<string> Passed)
{
    private const int MostLines = 20_000;

    /// <summary>Reads a table of yarns with commas, semicolons or tabs between its columns; the titles may be called as one likes.</summary>
    public static Outcome<YarnTable> Read(string text)
    {
        using var reader = new StringReader(text ?? "");
        using var csv = new CsvReader(reader, new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            DetectDelimiter = true,
            TrimOptions = TrimOptions.Trim,
            BadDataFound = null,
            MissingFieldFound = null,
            HeaderValidated = null,
            IgnoreBlankLines = true,
        });
        try
        {
            if (!csv.Read() || !csv.ReadHeader() || csv.HeaderRecord is not { } titles) return Outcome.Refused("", "The table is empty.");
            YarnColumns columns = YarnColumns.Of(titles);
            if (!columns.Has("name"))
                return Outcome.Refused("", $"No column is called 'name' or 'yarn'. The table has: {string.Join(", ", titles.Where(title => title.Length > 0).Take(12))}.");
            var lines = new List<YarnLine>();
            while (csv.Read())
            {
                if (lines.Count == MostLines) return Outcome.Refused("", $"The table has more than {MostLines:N0} lines. Part it into several.");
                if (csv.Parser.Record?.All(string.IsNullOrWhiteSpace) != true) lines.Add(YarnReading.Line(csv.Parser.RawRow, csv, columns));
            }

            return new YarnTable(lines, [.. titles.Where(columns.Knows)], [.. titles.Where(title => title.Length > 0 && !columns.Knows(title))]);
        }
        catch (CsvHelperException)
        {
            return Outcome.Refused("", "The table can't be read: a quotation mark is opened and not closed, or it is no table. Save it anew as CSV.");
        }
    }
}

/// <summary>Which column is which, by the words that people use.</summary>
internal sealed partial class YarnColumns
{
    private static readonly Dictionary<string, string[]> Words = new()
    {
        ["name"] = ["name", "yarn", "yarnname", "product", "title"],
        ["brand"] = ["brand", "company", "maker", "manufacturer", "producer"],
        ["fibre"] = ["fibre", "fiber", "fibres", "fibers", "material", "composition", "content", "fibercontent", "fibrecontent"],
        ["class"] = ["weight", "yarnweight", "weightclass", "category", "cyc", "thickness"],
        ["length"] = ["metres", "meters", "length", "yardage", "yards", "m", "yd", "yds", "metresperball", "metersperball", "yardsperball", "yardsperskein", "lengthperball", "meterage", "metreage"],
        ["grams"] = ["grams", "g", "gramsperball", "ballweight", "skeinweight", "gramsperskein", "weightg", "weightgrams", "weightperball", "unitweight", "ounces", "oz"],
        ["colour"] = ["colour", "color", "colourway", "colorway", "colourname", "colorname", "shade"],
        ["hex"] = ["hex", "colourhex", "colorhex", "rgb"],
        ["care"] = ["care", "washing", "laundry", "carinstructions", "careinstructions"],
        ["price"] = ["price", "cost", "priceperball", "unitprice"],
        ["currency"] = ["currency"],
        ["lot"] = ["dyelot", "lot", "batch"],
        ["balls"] = ["balls", "skeins", "quantity", "qty", "amount", "stash", "instock", "count"],
    };

    private readonly Dictionary<string, (int At, string Title)> columns = [];
    private readonly HashSet<string> known = [];

    public static YarnColumns Of(string[] titles)
    {
        var found = new YarnColumns();
        for (int i = 0; i < titles.Length; i++)
        {
            string plain = Plain(titles[i]), bare = Plain(Unit().Replace(titles[i], ""));
            string? key = Words.FirstOrDefault(word => word.Value.Contains(plain)).Key ?? Words.FirstOrDefault(word => word.Value.Contains(bare)).Key;
            // 'Weight (g)' is a ball's weight, 'Weight' the yarn's class.
            if (key == "class" && Grams().IsMatch(titles[i])) key = "grams";
            if (key is null || !found.columns.TryAdd(key, (i, titles[i]))) continue;
            found.known.Add(titles[i]);
        }

        return found;
    }

    public bool Has(string key) => columns.ContainsKey(key);

    public bool Knows(string title) => known.Contains(title);

    public string Get(IReaderRow row, string key) => columns.TryGetValue(key, out var column) ? row.GetField(column.At)?.Trim() ?? "" : "";

    public string TitleOf(string key) => columns.TryGetValue(key, out var column) ? column.Title : "";

    private static string Plain(string title) => Sign().Replace(title.ToLowerInvariant(), "");

    [GeneratedRegex("[^a-z]")]
    private static partial Regex Sign();

    [GeneratedRegex(@"[(\[].*?[)\]]")]
    private static partial Regex Unit();

    [GeneratedRegex(@"[(\[]\s*(g|grams?|oz)\s*[)\]]", RegexOptions.IgnoreCase)]
    private static partial Regex Grams();
}
