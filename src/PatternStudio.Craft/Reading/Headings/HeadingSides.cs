using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Headings;

/// <summary>Reads the side of the fabric in a heading: '(RS)', '(wrong side)', 'RS'.</summary>
internal static class HeadingSides
{
    private static readonly Phrase Right = new("rs|right side?");
    private static readonly Phrase Wrong = new("ws|wrong side?");
    private static readonly Phrase Facing = new("facing|row|rnd");

    public static RowHeading Take(Cursor cursor, RowHeading heading)
    {
        int from = cursor.At;
        bool open = cursor.Take(TokenKind.Open);
        FabricSide? side = cursor.Take(Right) ? FabricSide.Right : cursor.Take(Wrong) ? FabricSide.Wrong : null;
        cursor.Take(Facing);
        if (side is null || (open && !cursor.Take(TokenKind.Close)))
        {
            cursor.At = from;
            return heading;
        }
        return heading with { Side = side };
    }
}
