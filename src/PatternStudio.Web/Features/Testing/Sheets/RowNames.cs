using PatternStudio.Craft.Checking;

namespace PatternStudio.Web.Features.Testing.Sheets;

/// <summary>The names by which tester and designer speak of rows: 'Row 3', 'Row 3 to Row 6', 'Border, Rnd 1'.</summary>
internal static class RowNames
{
    /// <summary>True where a heading alone could be a row of either piece.</summary>
    public static bool NeedPieces(IEnumerable<RowReport> rows) => rows.Select(row => row.Piece).Distinct().Skip(1).Any();

    /// <summary>The rows that one line of the words calls for.</summary>
    public static string Of(IReadOnlyList<RowReport> rows, bool withPiece)
    {
        string name = rows.Count == 1 ? rows[0].Heading : $"{rows[0].Heading} to {rows[^1].Heading}";
        return withPiece && rows[0].Piece.Length > 0 ? $"{rows[0].Piece}, {name}" : name;
    }

    /// <summary>
    /// The 1-based line that calls for the rows of that name; where the words have been written anew since, the line of the single row
    /// that is called so. Null where nothing is.
    /// </summary>
    public static int? LineOf(IReadOnlyList<RowReport> rows, string name)
    {
        bool withPiece = NeedPieces(rows);
        return rows.GroupBy(row => row.Line).FirstOrDefault(line => Of([.. line], withPiece) == name)?.Key
            ?? rows.FirstOrDefault(row => row.Heading == name || Of([row], withPiece: true) == name)?.Line;
    }
}
