using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Writing;

/// <summary>Finds stitch names in a text and calls them as the other terminology does.</summary>
internal sealed class StitchRenamer
{
    private const int LongestName = 12;

    /// <summary>Names that are English words first: stitches in an instruction only.</summary>
    private static readonly HashSet<string> EnglishWords = new(StringComparer.Ordinal) { "single", "double", "long", "plain", "triple", "slip" };

    private readonly SourceText source;
    private readonly Token[] tokens;
    private readonly Terminology from;
    private readonly Terminology to;
    private readonly NameTree own = new();
    private readonly InstructionSpans instructions;

    public StitchRenamer(Pattern pattern, Token[] tokens, Terminology to)
    {
        (source, this.tokens, this.to) = (pattern.Source, tokens, to);
        from = pattern.Terms.Terminology;
        instructions = InstructionSpans.Of(pattern);
        foreach (StitchDefinition definition in pattern.Definitions.Where(definition => Vocabulary.Standard.Find(definition.Id) is null))
            foreach (string name in definition.Names)
                own.Add(name, definition.Id);
    }

    /// <summary>What becomes of the stitch name at a token; null where none stands there.</summary>
    public TermsChange? At(int at)
    {
        if (tokens[at].Kind is not (TokenKind.Word or TokenKind.Number)) return null;
        if (Longest(at, Vocabulary.Standard.Names(from)) is not var (stitch, after)) return null;
        // The designer's own name for a stitch means the same in any terms; but 'beg dc' holds a stitch that is called otherwise.
        if (Longest(at, own) is { } named && named.After == after) return new TermsChange(null, after);
        TextSpan span = tokens[at].Span.Through(tokens[after - 1].Span);
        string written = source.Slice(span);
        if (EnglishWords.Contains(written.ToLowerInvariant()) && !instructions.Hold(span)) return null;
        return new TermsChange(Rename(stitch, written) is { } name && name != written ? new TextEdit(span, name) : null, after);
    }

    private string? Rename(StitchId stitch, string written)
    {
        if (Vocabulary.Standard.Meaning(written, to) == stitch || Vocabulary.Standard.Find(stitch) is not { } term) return null;
        return NameStyle.Of(written).Choose(term.Names(to), term.Names(from));
    }

    private (StitchId Stitch, int After)? Longest(int at, NameTree names)
    {
        (StitchId, int)? found = null;
        NameTree? node = names;
        for (int i = at; i < tokens.Length && i - at < LongestName; i++)
        {
            if (i > at && tokens[i].StartsLine) break;
            if (i > at && tokens[i].Kind is TokenKind.Hyphen or TokenKind.Slash) continue;
            node = node.Next(tokens[i].Kind == TokenKind.Number ? tokens[i].Value.ToString() : tokens[i].Kind == TokenKind.Word ? tokens[i].Word : "");
            if (node is null) break;
            if (node.Stitch is { } stitch) found = (stitch, i + 1);
        }

        return found;
    }
}
