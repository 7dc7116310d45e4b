using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Anatomy;

/// <summary>A stitch definition read motion by motion.</summary>
/// <param name="Motions">The motions in order, repeats worked out.</param>
/// <param name="Unread">Words that could not be read as motions; where there are any, nothing is concluded from the rest.</param>
public sealed record ReadMotions(EquatableArray<LocatedMotion> Motions, EquatableArray<TextSpan> Unread)
{
    /// <summary>True where every word was understood.</summary>
    public bool IsWhole => Unread.IsEmpty && !Motions.IsEmpty;

    /// <summary>True where the words tell the hook what to do; false where they only name stitches and chains ('2 dc, ch 1, 2 dc').</summary>
    public bool TellsMotions => Motions.Any(located => located.Motion is not (WholeStitch or LockingChain or StatedLoops));
}

/// <summary>A motion and the words that tell it.</summary>
public sealed record LocatedMotion(Motion Motion, TextSpan Span);
