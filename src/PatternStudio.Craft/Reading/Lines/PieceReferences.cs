using PatternStudio.Craft.Reading.Steps;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Lines;

/// <summary>Reads 'Work as for Back to end of Row 24', 'Work same as Front', 'Make as for First sleeve'.</summary>
internal static class PieceReferences
{
    private static readonly Phrase WorkAs = new("work|make same? as for? the?");
    private static readonly Phrase Through = new("to|through|until the? end? of?");
    private static readonly Phrase RowWord = new("row|rnd");
    private const int MostNameWords = 5;

    public static WorkAsPiece? Take(Cursor cursor)
    {
        int from = cursor.At;
        if (!cursor.Take(WorkAs))
        {
            cursor.At = from;
            return null;
        }
        int name = cursor.At;
        while (cursor.At - name < MostNameWords && cursor.Kind is TokenKind.Word && !cursor.Is(Through) && cursor.Now.Word is not ("row" or "rnd" or "last" or "prev")) cursor.At++;
        if (cursor.At == name || !char.IsUpper(cursor.Context.Source.Content[cursor.Context.Tokens[name].Span.Start]))
        {
            cursor.At = from;
            return null;
        }
        string piece = cursor.Slice(name, cursor.At);
        int? through = TakeThrough(cursor);
        Clauses.TakeToComma(cursor);
        var reference = new WorkAsPiece(piece, through, cursor.SpanFrom(from));
        cursor.SkipSeparators();
        return reference;
    }

    private static int? TakeThrough(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(Through) && cursor.Take(RowWord) && Numbers.TakePlain(cursor) is { } row) return row;
        cursor.At = from;
        return null;
    }
}
