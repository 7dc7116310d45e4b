using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads colours and yarns: 'with A', 'change to B in last yo', 'join C with sl st in any tr', 'attach yarn in corner sp'.</summary>
internal static class ColourSteps
{
    private static readonly Phrase Change = new("change|switch color? to");
    private static readonly Phrase ChangeColour = new("change color");
    private static readonly Phrase With = new("with|using|in|use");
    private static readonly Phrase Attach = new("attach|join|rejoin|reattach|fasten in? new?");
    private static readonly Phrase JoinAnywhere = new("join|rejoin in|between any");
    private static readonly Phrase PickUp = new("pick up");
    private static readonly Phrase Yarn = new("the? new? yarn");
    private static readonly Phrase NextColour = new("the? next|new|other|second|contrasting color");
    private static readonly Phrase WithStitch = new("with|by|using a|1?");
    private static readonly Phrase Somewhere = new("in|at|on|to|about|near|where|next|between|across|around|from|under");
    private static readonly Phrase Drop = new("drop|carry|leave");
    private static readonly Phrase InFront = new("in front|back of the? work");
    private static readonly Phrase WhereChanged = new("in|on|at|with|when|as the? last");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (ReadPrefix(cursor, steps, from) || ReadChange(cursor, steps, from)) return true;
        cursor.At = from;
        if (ReadLetters(cursor, steps, from)) return true;
        cursor.At = from;
        if (ReadLabel(cursor, steps, from)) return true;
        cursor.At = from;
        if (ReadAttach(cursor, steps, from)) return true;
        cursor.At = from;
        if (ReadWith(cursor, steps, from)) return true;
        cursor.At = from;
        return ReadDrop(cursor, steps, from) || ReadShade(cursor, steps, from);
    }

    /// <summary>'MC - sc in each st', 'Teal: ch 1, …': the colour before the words of a row.</summary>
    private static bool ReadPrefix(Cursor cursor, StepList steps, int from)
    {
        if (cursor.At == cursor.Start && ColourNames.Take(cursor, anyWord: false) is { Length: > 0 } colour && cursor.Kind is TokenKind.Dash or TokenKind.Colon && !cursor.Context.LineHasNoHeading)
        {
            steps.Add(new ColourStep(colour, cursor.SpanFrom(from)));
            return true;
        }
        cursor.At = from;
        return false;
    }

    private static bool ReadChange(Cursor cursor, StepList steps, int from)
    {
        if (!cursor.Take(Change) && !cursor.Take(PickUp))
        {
            if (!cursor.Take(ChangeColour)) return false;
            Clauses.TakeToComma(cursor);
            steps.Add(new RemarkStep(cursor.Slice(from, cursor.At), cursor.SpanFrom(from)));
            return true;
        }
        if (ColourNames.Take(cursor, anyWord: true) is not { } colour) return false;
        if (cursor.Is(WhereChanged)) Clauses.TakeToComma(cursor);
        steps.Add(new ColourStep(colour, cursor.SpanFrom(from)));
        return true;
    }

    private static bool ReadAttach(Cursor cursor, StepList steps, int from)
    {
        bool attach = cursor.Now.IsWord("attach");
        if (ReadAttachAnywhere(cursor, steps, from)) return true;
        if (!cursor.Take(Attach)) return false;
        bool yarn = cursor.Take(Yarn) || cursor.Take(NextColour);
        string? colour = ColourNames.Take(cursor, anyWord: attach && !yarn);
        if (!yarn && colour is null && !attach) return false;
        StitchId? stitch = cursor.Take(WithStitch) ? cursor.TakeStitch() : null;
        Placement? where = Placements.Take(cursor) ?? TakeSomewhere(cursor);
        // 'at bottom right corner': the words go on about the place.
        if (where?.Further is not null && cursor.Now.Word is "right" or "left" or "corner" or "edge") Clauses.TakeToComma(cursor);
        if (stitch == StitchId.SlipStitch) stitch = null;
        steps.Add(new AttachStep(colour, where, stitch, cursor.SpanFrom(from)));
        return true;
    }

    /// <summary>'With B, join in any corner sp': before anything is worked, it is the yarn that is joined.</summary>
    private static bool ReadAttachAnywhere(Cursor cursor, StepList steps, int from)
    {
        if (!cursor.Is(JoinAnywhere) || steps.Steps.Any(step => step is StitchStep or GroupStep or RepeatStep or ChainStep)) return false;
        cursor.At++;
        if (Placements.Take(cursor) is not { } where)
        {
            cursor.At = from;
            return false;
        }
        steps.Add(new AttachStep(null, where, null, cursor.SpanFrom(from)));
        return true;
    }

    /// <summary>'about ¼ inch from any corner', 'in joining of the 2 motifs': a place the tree can't name.</summary>
    private static Placement? TakeSomewhere(Cursor cursor)
    {
        int from = cursor.At;
        if (!cursor.Is(Somewhere)) return null;
        Clauses.TakeToComma(cursor);
        return new Placement(PlaceChoice.Next, PlaceKind.AnyStitch, cursor.SpanFrom(from)) { Further = cursor.SpanFrom(from) };
    }

    private static bool ReadWith(Cursor cursor, StepList steps, int from)
    {
        if (!cursor.Take(With) || ColourNames.Take(cursor, anyWord: cursor.Ahead(1) is { Kind: TokenKind.Comma or TokenKind.Dash } or { Word: "ch" }) is not { } colour) return false;
        int after = cursor.At;
        if (cursor.TakeWord("and") && !cursor.AtEnd)
        {
            int words = cursor.At;
            Clauses.TakeToComma(cursor);
            bool tools = false;
            for (int i = words; i < cursor.At; i++) tools |= cursor.Context.Tokens[i].Word is "hook" or "strand" or "strands";
            if (!tools) cursor.At = after;
        }
        AddColour(cursor, steps, from, colour);
        return true;
    }

    /// <summary>'9 sc in A, 2 sc in B': the colour of the stitches just told. With a comma before it, the colour is that of what follows.</summary>
    private static void AddColour(Cursor cursor, StepList steps, int from, string colour)
    {
        var step = new ColourStep(colour, cursor.SpanFrom(from));
        bool ofLast = steps.Last is StitchStep && cursor.Context.Tokens[from - 1].Kind is TokenKind.Word or TokenKind.Number;
        if (ofLast && steps.Last is { } last)
        {
            steps.ReplaceLast(step);
            steps.Add(last);
        }
        else steps.Add(step);
    }

    /// <summary>'Row 1: A – sc in …', 'Rnd 2: MC: …': the yarn, then a mark.</summary>
    private static bool ReadLabel(Cursor cursor, StepList steps, int from)
    {
        if (steps.Count > 0 || !IsLetterOfYarn(cursor) || cursor.Ahead(1).Kind is not (TokenKind.Dash or TokenKind.Colon)) return false;
        cursor.At++;
        steps.Add(new ColourStep(cursor.Slice(from, cursor.At), cursor.SpanFrom(from)));
        return true;
    }

    private static bool IsLetterOfYarn(Cursor cursor) => cursor.Raw is "MC" or "CC" or "A" or "B" or "C" or "D" or "CC1" or "CC2" or "CC3";

    /// <summary>'sc 8 MC, sc 4 CC': the yarn's letters alone behind the stitches.</summary>
    private static bool ReadLetters(Cursor cursor, StepList steps, int from)
    {
        if (steps.Last is not StitchStep || from == cursor.Start || cursor.Context.Tokens[from - 1].Kind is not (TokenKind.Word or TokenKind.Number) || !IsLetterOfYarn(cursor)) return false;
        cursor.At++;
        if (!cursor.AtEnd && !Cursor.IsSeparator(cursor.Kind) && cursor.Kind is not (TokenKind.Open or TokenKind.Close or TokenKind.Star)) return false;
        AddColour(cursor, steps, from, cursor.Slice(from, cursor.At));
        return true;
    }

    /// <summary>'with the darkest shade of red wool', 'in natural warp', 'Same shade', '3rd shade of red'.</summary>
    private static bool ReadShade(Cursor cursor, StepList steps, int from)
    {
        cursor.At = from;
        bool with = cursor.Take(With);
        int name = cursor.At;
        Numbers.TakeOrdinal(cursor);
        bool shade = false;
        while (!cursor.AtEnd && cursor.At - name < 7 && cursor.Kind is TokenKind.Word or TokenKind.Ordinal && cursor.Now.Word is not ("st" or "sp" or "ch" or "loop" or "next" or "each"))
        {
            shade |= cursor.Now.Word is "shade" or "yarn" or "color" or "strands" or "strand";
            cursor.At++;
        }
        if (!shade || (!with && cursor.Context.Tokens[name].Kind != TokenKind.Ordinal && !cursor.Context.Tokens[name].IsWord("same") && !cursor.Context.Tokens[name].IsWord("second") && !cursor.Context.Tokens[name].IsWord("third"))) return false;
        steps.Add(new ColourStep(cursor.Slice(name, cursor.At), cursor.SpanFrom(from)));
        return true;
    }

    private static bool ReadDrop(Cursor cursor, StepList steps, int from)
    {
        if (!cursor.Take(Drop) || (ColourNames.Take(cursor, anyWord: false) is null && !cursor.Take(Yarn))) return false;
        if (cursor.Take(InFront)) cursor.TakeWord("and");
        else Clauses.TakeToComma(cursor);
        steps.Add(new RemarkStep(cursor.Slice(from, cursor.At), cursor.SpanFrom(from)));
        return true;
    }
}
