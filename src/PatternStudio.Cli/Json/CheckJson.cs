using System.Text.Json;
using System.Text.Json.Serialization;
using PatternStudio.Craft.Checking;

namespace PatternStudio.Cli.Json;

/// <summary>What <c>check --json</c> writes. Names and meanings are a contract: add, never change.</summary>
/// <param name="Terms">'us' or 'uk'.</param>
/// <param name="Rows">Every row as worked; absent where there are several sizes.</param>
/// <param name="Sizes">Each size by itself; absent where there is one.</param>
/// <param name="Findings">In the order of the text.</param>
/// <param name="Read">How many rows there are, were read and were checked; absent where there are several sizes.</param>
internal sealed record CheckJson(
    string Terms,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyList<RowJson>? Rows,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyList<SizeJson>? Sizes,
    IReadOnlyList<FindingJson> Findings,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] ReadJson? Read)
{
    public static string Write(CheckedPattern found) => JsonSerializer.Serialize(From(found), CliJson.Readable.CheckJson);

    private static CheckJson From(CheckedPattern found)
    {
        List<SizeJson> sizes = [.. found.Sizes.Select((_, index) => SizeJson.From(found, index))];
        FindingJson[] findings = [.. found.Findings.Select(finding => FindingJson.From(finding, found.Pattern.Source))];
        string terms = TermsOption.Name(found.Pattern.Terms.Terminology);
        return found.HasSizes
            ? new CheckJson(terms, null, sizes, findings, null)
            : new CheckJson(terms, sizes[0].Rows, null, findings, sizes[0].Read);
    }
}

/// <summary>One size of a pattern.</summary>
internal sealed record SizeJson(string Name, IReadOnlyList<RowJson> Rows, ReadJson Read)
{
    public static SizeJson From(CheckedPattern found, int index)
    {
        CheckedSize size = found.Sizes[index];
        bool pieces = size.Rows.Select(row => row.Piece).Distinct().Count() > 1;
        return new SizeJson(size.Name, [.. size.Rows.Select(row => RowJson.From(row, pieces, index, found.Sizes.Count))], ReadJson.From(size.Read));
    }
}

/// <summary>How much was read and checked.</summary>
internal sealed record ReadJson(int Rows, int Read, int Checked)
{
    public static ReadJson From(ReadSummary summary) => new(summary.Rows, summary.Read, summary.Checked);
}
