using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.TermsFinding;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Headings;

/// <summary>The heading of a piece: 'Square', 'BORDER:', 'First sleeve (make 2)'.</summary>
internal sealed record PieceHeading(string Name, SizedNumber? Make, TextSpan Span);

/// <summary>Reads headings of pieces: a short line alone, or capital words with a colon before an instruction.</summary>
internal static class PieceHeadings
{
    private const int MostWords = 7;
    private static readonly Phrase WorkAs = new("work|make same? as");
    private static readonly Phrase MakeWord = new("make");

    public static PieceHeading? Take(Cursor cursor)
    {
        int from = cursor.At;
        if (Statements.Instructions.StartAt(cursor) && !IsAllCapitals(cursor) || cursor.Is(WorkAs)) return null;
        bool upper = true;
        while (!cursor.AtEnd && cursor.At - from < MostWords && IsOfName(cursor)) {
            upper &= !cursor.Raw.Any(char.IsLower);
            cursor.At++;
        }
        int end = cursor.At;
        if (end > from && IsUpperFirst(cursor, from) && !NamesNoPiece(cursor, from, end) && !Instructs(cursor, from, end))
        {
            SizedNumber? make = TakeMake(cursor);
            bool marked = TakeMark(cursor);
            if (cursor.AtEnd || (marked && (upper || (IsTitle(cursor, from, end) && Statements.Instructions.StartAt(cursor)))))
                return new PieceHeading(cursor.Slice(from, end), make, cursor.SpanFrom(from));
        }
        cursor.At = from;
        return null;
    }

    /// <summary>'A pattern by …', 'Designed by …' names the designer, 'This pattern uses US terms' the terms.</summary>
    private static bool NamesNoPiece(Cursor cursor, int from, int end)
    {
        for (int i = from; i < end; i++)
            if (cursor.Context.Tokens[i].Word == "by" || TermsFinder.StatedAt(cursor.Context.Tokens.AsSpan(0, end), i) is not null) return true;
        return false;
    }

    /// <summary>'Fasten off', 'Make a magic ring' are short lines too, but they instruct.</summary>
    private static bool Instructs(Cursor cursor, int from, int end)
    {
        IReadOnlyList<Step> steps = Steps.StepReader.ReadAll(new Cursor(cursor.Context, from, end, cursor.Depth)).Steps;
        if (steps.All(step => step is StitchStep { Where: null } part && IsPart(part.Stitch)) && end == cursor.End) return false;
        bool names = steps.All(step => step is StitchStep { Where: null } or JoinStep) && IsTitle(cursor, from, end) && end == cursor.End;
        return !names && steps.All(step => step is not UnreadStep);
    }

    /// <summary>'Five-petal flower': parts of the work, no stitches.</summary>
    private static bool IsPart(Terms.StitchId name) => Terms.Vocabulary.Standard.Find(name) is null && Terms.Synonyms.Group(name.Value) is not null;

    /// <summary>'Joining Round', 'Increase': every word with a capital.</summary>
    private static bool IsTitle(Cursor cursor, int from, int end)
    {
        for (int i = from; i < end; i++)
            if (cursor.Context.Tokens[i].Kind != TokenKind.Word || !char.IsUpper(cursor.Context.Source.Content[cursor.Context.Tokens[i].Span.Start])) return false;
        return true;
    }

    /// <summary>'JOINING MOTIF:' begins like an instruction, but is none.</summary>
    private static bool IsAllCapitals(Cursor cursor) => cursor.Raw.Length > 1 && !cursor.Raw.Any(char.IsLower);

    private static bool IsUpperFirst(Cursor cursor, int from)
    {
        char first = cursor.Context.Source.Content[cursor.Context.Tokens[from].Span.Start];
        return char.IsUpper(first) || char.IsDigit(first);
    }

    private static bool IsOfName(Cursor cursor)
    {
        if (cursor.Kind is TokenKind.Number or TokenKind.Ordinal or TokenKind.Quote or TokenKind.Hyphen or TokenKind.Slash) return true;
        return cursor.Kind == TokenKind.Word && cursor.Now.Word is not ("ch" or "turn" or "rep" or "skip" or "join" or "attach" or "with" or "row" or "rnd");
    }

    private static bool TakeMark(Cursor cursor)
    {
        int from = cursor.At;
        while (cursor.Kind is TokenKind.Colon or TokenKind.Dash or TokenKind.Dot) cursor.At++;
        return cursor.At > from;
    }

    /// <summary>'(make 2)'.</summary>
    private static SizedNumber? TakeMake(Cursor cursor)
    {
        int from = cursor.At;
        cursor.Take(TokenKind.Dash);
        cursor.Take(TokenKind.Comma);
        cursor.Take(TokenKind.Open);
        if (cursor.Take(MakeWord) && (Numbers.Take(cursor) ?? Extents.TakeTimes(cursor)?.Count) is { } make)
        {
            while (cursor.Kind == TokenKind.Word && cursor.Now.Word is "alike" or "in" or "of" or "each" or "color" or "same") cursor.At++;
            cursor.Take(TokenKind.Close);
            return make;
        }
        cursor.At = from;
        return null;
    }
}
