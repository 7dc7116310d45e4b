using System.Text.Json.Serialization;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Cli.Json;

/// <summary>A row as worked.</summary>
/// <param name="Stitches">The total by the pattern's own convention; null where the row is not checked.</param>
/// <param name="Stated">The count in the text: a number where it is one plain number, else its words; null for none.</param>
/// <param name="CountAgrees">Null where nothing comparable is stated or the row is not checked.</param>
/// <param name="Counts">Stitches by kind: 'sc' → 20.</param>
/// <param name="Spaces">Chain spaces by length: 'ch-2' → 3.</param>
internal sealed record RowJson(
    int Number,
    string Heading,
    int Line,
    string Status,
    long? Stitches,
    StatedJson? Stated,
    bool? CountAgrees,
    IReadOnlyDictionary<string, long> Counts,
    IReadOnlyDictionary<string, long> Spaces)
{
    /// <summary>Which piece it belongs to, where there are several.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Piece { get; init; }

    public static RowJson From(RowReport row, bool namePiece, int size, int sizes) => new(
        row.Number, row.Heading, row.Line, StatusName(row.Status), row.Stitches, StatedJson.From(row.Stated, size, sizes), row.CountAgrees, row.Counts, row.Spaces)
    {
        Piece = namePiece ? row.Piece : null,
    };

    private static string StatusName(RowStatus status) => status switch
    {
        RowStatus.Checked => "checked",
        RowStatus.NotChecked => "not-checked",
        _ => "not-read",
    };
}
