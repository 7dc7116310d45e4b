using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Anatomy;

/// <summary>How the loops of a definition can fail to add up.</summary>
public enum LoopTroubleKind
{
    /// <summary>The words state another number of loops than there are: 'all 7 loops' with 6 on the hook, '(3 loops on hook)' with 4.</summary>
    StatedDiffers,

    /// <summary>The hook is to draw through more loops than there are.</summary>
    TooFewOnHook,

    /// <summary>The stitch ends with more than one loop on the hook.</summary>
    EndsOpen,
}

/// <summary>One place where the loops do not add up.</summary>
/// <param name="Stated">The number in the words; 1 for <see cref="LoopTroubleKind.EndsOpen"/>.</param>
/// <param name="OnHook">The loops that really are on the hook there.</param>
/// <param name="Span">The words that state it.</param>
public readonly record struct LoopTrouble(LoopTroubleKind Kind, int Stated, int OnHook, TextSpan Span);

/// <summary>Finds where the loops of a definition do not add up.</summary>
public static class LoopTroubles
{
    /// <summary>
    /// The troubles in the order of the text; none where some words were not read, for then nothing is certain.
    /// Words inside a repeat are right when they are right in one of its turns: '(7 loops on hook)' is often said once
    /// for the last turn.
    /// </summary>
    public static EquatableArray<LoopTrouble> Of(ReadMotions read)
    {
        if (!read.IsWhole) return [];
        var said = new Dictionary<TextSpan, Claim>();
        int loops = LoopTrace.AtStart;
        foreach (LocatedMotion located in read.Motions)
        {
            Hear(located, loops, said);
            loops = LoopTrace.After(loops, located.Motion);
        }

        IEnumerable<LoopTrouble> troubles = said.Values.Where(claim => !claim.Held).Select(claim => claim.Trouble);
        if (loops > 1) troubles = troubles.Append(new LoopTrouble(LoopTroubleKind.EndsOpen, 1, loops, read.Motions[^1].Span));
        return troubles.OrderBy(trouble => trouble.Span.Start).ToEquatableArray();
    }

    private static void Hear(LocatedMotion located, int loops, Dictionary<TextSpan, Claim> said)
    {
        switch (located.Motion)
        {
            case StatedLoops stated:
                Judge(LoopTroubleKind.StatedDiffers, stated.Loops, loops, stated.Span, stated.Loops == loops);
                break;
            case DrawThrough { Stated: { } stated }:
                Judge(LoopTroubleKind.StatedDiffers, stated, loops, located.Span, stated == loops);
                break;
            case DrawThrough { Loops: { } taken }:
                Judge(LoopTroubleKind.TooFewOnHook, taken, loops, located.Span, taken <= loops);
                break;
            case DrawThroughPlace { Loops: { } taken }:
                Judge(LoopTroubleKind.TooFewOnHook, taken, loops, located.Span, taken <= loops);
                break;
        }

        void Judge(LoopTroubleKind kind, int stated, int onHook, TextSpan span, bool holds)
        {
            bool held = holds || (said.TryGetValue(span, out Claim earlier) && earlier.Held);
            said[span] = new Claim(new LoopTrouble(kind, stated, onHook, span), held);
        }
    }

    private readonly record struct Claim(LoopTrouble Trouble, bool Held);
}
