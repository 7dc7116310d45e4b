using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Tree;

/// <summary>A pattern as read: every node knows its span in the text, and what could not be read is a node too.</summary>
/// <param name="Source">The text.</param>
/// <param name="Terms">The terminology it was read in, and why.</param>
/// <param name="Sizes">Names of the sizes in order; one empty name where there is one size only.</param>
/// <param name="Pieces">The pieces in order; a text without piece headings has one with an empty name.</param>
/// <param name="Definitions">The special stitches that the text defines.</param>
/// <param name="Statements">Gauge, finished size, yarn, multiple and the like, as stated.</param>
/// <param name="Troubles">What reading itself found wrong (a size list too short, a repeat mark without its star).</param>
public sealed record Pattern(
    SourceText Source,
    TermsDecision Terms,
    EquatableArray<string> Sizes,
    EquatableArray<Piece> Pieces,
    EquatableArray<StitchDefinition> Definitions,
    EquatableArray<Statement> Statements,
    EquatableArray<ReadingTrouble> Troubles);

/// <summary>A piece of the pattern: 'Square', 'Border', 'First sleeve'.</summary>
/// <param name="Name">As headed; empty where there is no heading.</param>
public sealed record Piece(string Name, EquatableArray<PieceItem> Items, TextSpan Span)
{
    /// <summary>'(make 2)': how many are made.</summary>
    public SizedNumber? Make { get; init; }
}

/// <summary>How the terminology became known.</summary>
public enum TermsOrigin { Told, Stated, Found, Assumed }

/// <summary>Whose words the pattern uses, and how that is known.</summary>
/// <param name="Terminology">US or UK.</param>
/// <param name="Origin">Told by the caller, stated in the text, found from evidence, or assumed (US) for want of any.</param>
/// <param name="Sureness">0 to 1.</param>
/// <param name="Evidence">The spans that speak for it, strongest first.</param>
public sealed record TermsDecision(Terminology Terminology, TermsOrigin Origin, double Sureness, EquatableArray<TextSpan> Evidence)
{
    /// <summary>Spans that speak for the other terminology: words that exist there alone.</summary>
    public EquatableArray<TextSpan> Against { get; init; }
}

/// <summary>
/// A stitch that the text defines: 'Puff stitch (puff): [Yo, insert hook in st, yo and draw up a loop] 3 times in same st, yo and draw through all 7 loops on hook.'
/// Either <see cref="Motions"/> (told motion by motion) or <see cref="Steps"/> (told in stitches: '5 dc in same st') is present; neither where it could not be read.
/// </summary>
/// <param name="Id">How rows name it.</param>
/// <param name="Names">Every name and abbreviation given, as written.</param>
public sealed record StitchDefinition(StitchId Id, EquatableArray<string> Names, TextSpan Span)
{
    /// <summary>The hook motions, worked loop by loop.</summary>
    public ReadMotions? Motions { get; init; }

    /// <summary>The stitches and chains it is made of, all in one place unless they say otherwise.</summary>
    public EquatableArray<Step> Steps { get; init; }

    /// <summary>The defining words, without the name.</summary>
    public TextSpan Body { get; init; }
}

/// <summary>What a statement of the front matter says.</summary>
public enum StatementKind { Title, Terms, Gauge, FinishedSize, Yarn, Hook, Multiple, Sizes, Level, Note, Abbreviation, TurningChain }

/// <summary>A statement about the pattern as a whole.</summary>
/// <param name="Text">The words after the label.</param>
public sealed record Statement(StatementKind Kind, string Text, TextSpan Span)
{
    /// <summary>For <see cref="StatementKind.TurningChain"/>: number of chains (0 for turning chains of any number), and whether they count ('ch 3 counts as a dc throughout').</summary>
    public (int Chains, bool Counts)? TurningChain { get; init; }

    /// <summary>For <see cref="StatementKind.TurningChain"/>: the stitch they count as, where stated.</summary>
    public StitchId? CountsAs { get; init; }
}

/// <summary>What can be wrong with the text before any stitch is worked.</summary>
public enum ReadingTroubleKind
{
    /// <summary>A size list has not as many numbers as there are sizes.</summary>
    SizeListLength,

    /// <summary>'rep from *' with no star before it, or a star that nothing repeats.</summary>
    RepeatWithoutStar,
    StarWithoutRepeat,

    /// <summary>A bracket that is not closed, or closed and never opened.</summary>
    BracketOpen,

    /// <summary>More nesting, more text or larger numbers than any pattern needs: <see cref="ReadingTrouble.Detail"/> names the limit.</summary>
    TooLarge,

    /// <summary>The text holds bytes that are no writing.</summary>
    NotText,

    /// <summary>A word of the other terminology.</summary>
    OtherTerminology,
}

/// <summary>One such trouble.</summary>
public sealed record ReadingTrouble(ReadingTroubleKind Kind, string Detail, TextSpan Span);
