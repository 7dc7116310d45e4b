using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads remarks that patterns make in a row and that instruct nothing countable: 'RS facing', 'pull ring tight', 'weave in ends'.</summary>
internal static class RemarkSteps
{
    /// <summary>How remarks begin that may hold any word: sewing, care, what comes of it.</summary>
    private static readonly PhraseSet Sure = new(
    [
        new("# times over hook|needle"), new("ch? loosely? a|any? multiple of"), new("at|after the? end of the? row|rnd|last|final|this|each|every"), new("the large|small|first|second? ring|square|piece|motif|work|center|flower|star is completed|finished|done"), new("total #"), new("there are|is|will|should"), new("beg at|from"), new("this increases|allows|decreases|leaves"), new("to keep"), new("to even"), new("to adjust"), new("overlapping"), new("matching"), new("spread"), new("that is"), new("embroider"), new("if"), new("all rather"), new("tie"), new("they must"), new("these st"), new("here begins|beg"), new("for the? buttons|button|upper"), new("starting at|from"), new("being|be careful"), new("applique"), new("sew|tack|baste|attach to|fasten to"), new("cut # strips|pieces|squares"), new("turn under"), new("when change|changing"), new("pick up and"), new("which forms|completes|will|closes|is"), new("place between|over|around|at|in"), new("taking|take care"), new("making|make sure"), new("be sure"), new("sew"), new("weave in|ends|all"), new("block"), new("stuff"), new("pin"), new("press|steam"),
        new("overcast"), new("whipstitch"), new("whip st"), new("seam"), new("leaving|leave a|an|long|about"), new("adjust"), new("tighten"), new("hold"), new("fold"), new("work through both|all"), new("work behind|around|over|under"), new("work in the? front|back"),
        new("in front|back of"), new("behind"), new("work # more"), new("repeats|repeat as desired"), new("or any"), new("for the? strap|tie|hanging|loop|button|buttonhole"), new("keeping|keep"), new("mark"),
        new("with? the? rs|ws"), new("with? the? right|wrong side"), new("rs|ws"), new("right|wrong side"), new("this is|side|brings|forms|completes|will|makes|gives|make"), new("see"), new("note"), new("as shown|illustrated"),
        new("cont in|with|work in|with? pattern|this|same|spiral|established"), new("do not fasten|cut|break"), new("do not twist"), new("without twisting"),
        new("use|using|move|moving|place|attach|insert a? st? marker|scrap|contrasting|safety"), new("and? mark"),
    ]);

    /// <summary>How remarks begin that are remarks only without stitch, number or repeat in them.</summary>
    private static readonly PhraseSet Careful = new(
    [
        new("pull|draw the? ring|tail|magic|beg|up|tight|end|it"), new("change color as|throughout|every"), new("as set|established"), new("in pattern"), new("work in rnd|row|a|continuous|spiral|pattern"), new("cont"),
        new("carry"), new("rotate|rotating"), new("remove"), new("tie"), new("secure"), new("trim"), new("loosely"), new("place"), new("check"), new("set aside"), new("first side"), new("for"), new("to form|make|complete"), new("now"), new("and close"), new("to finish|secure off?"),
    ]);

    private static readonly Phrase LabelStart = new("after|beg|start|at the?");

    /// <summary>'After the 7th treble:', 'Start petals:': where in the work this is.</summary>
    private static bool TakeLabel(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(LabelStart))
        {
            while (cursor.At - from < 12 && cursor.Kind is TokenKind.Word or TokenKind.Ordinal or TokenKind.Number) cursor.At++;
            if (cursor.Kind == TokenKind.Colon) return true;
        }
        cursor.At = from;
        return false;
    }

    private static readonly Phrase With = new("with|using|use|on");

    /// <summary>'With 4.0 mm hook,', 'Using smaller hook and two strands held together,': what is in the hands.</summary>
    private static bool NamesTools(Cursor cursor)
    {
        if (!cursor.Is(With)) return false;
        for (int by = 1; by < 12 && cursor.Ahead(by).Kind is TokenKind.Word or TokenKind.Number or TokenKind.Fraction or TokenKind.Hyphen or TokenKind.Slash or TokenKind.Open or TokenKind.Close; by++)
            if (cursor.Ahead(by).Word is "hook" or "needle" or "strand" or "strands") return true;
        return false;
    }

    /// <summary>'Fold flat and sc through both layers 4 times': what is worked then is no remark.</summary>
    private static void LeaveWorkBehindFold(Cursor cursor, int from)
    {
        int end = cursor.At;
        if (!cursor.Context.Tokens[from].IsWord("fold")) return;
        for (int i = from + 1; i < end; i++)
        {
            if (!cursor.Context.Tokens[i].IsWord("and")) continue;
            cursor.At = i + 1;
            if (cursor.TakeStitch() is null) continue;
            cursor.At = i;
            return;
        }
        cursor.At = end;
    }

    /// <summary>Takes a remark.</summary>
    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (TakeLabel(cursor))
        {
            steps.Add(new RemarkStep(cursor.Slice(from, cursor.At), cursor.SpanFrom(from)));
            return true;
        }
        bool sure = Sure.IsAt(cursor) || NamesTools(cursor);
        if (!sure && !Careful.IsAt(cursor)) return false;
        Clauses.TakeToComma(cursor);
        LeaveWorkBehindFold(cursor, from);
        if (cursor.At == from || (!sure && !RemarkWords.AreRemark(new Cursor(cursor.Context, from, cursor.At, cursor.Depth)))) return false;
        steps.Add(new RemarkStep(cursor.Slice(from, cursor.At), cursor.SpanFrom(from)));
        return true;
    }
}
