using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.TermsFinding;

/// <summary>
/// What the heights of turning chains say. A 'dc' that three chains stand for is the US one; where 'tr' has three chains, both are UK. The usual chains: US sc 1, dc 3, tr 4;
/// the same stitches in the UK: dc 1, tr 3, dtr 4 (the Craft Yarn Council's and the trade's tables of turning chains).
/// </summary>
internal static class HeightEvidence
{
    private static readonly Phrase Said = new("count as a|#|first|one? beg?");
    private static readonly Phrase FromHook = new("in|under the? ##|second|fourth|fifth ch from the|your? hook");
    private static readonly Phrase Double = new("dc|double crochet?");
    private static readonly Phrase Treble = new("tr|treble crochet?");
    private static readonly Phrase DoubleTreble = new("dtr|double treble crochet?");

    private static readonly Phrase Beginning = new("ch # ,");

    /// <summary>What is said of a height ('ch 3 counts as dc') weighs more than where a first stitch goes ('dc in 4th ch from hook'), and that more than what a row begins with.</summary>
    private const double SaidWeight = 6, PlacedWeight = 3, BegunWeight = 1.5;

    /// <summary>Every evidence; the first of each sort counts in full, a repetition a tenth.</summary>
    public static List<Evidence> In(Token[] tokens)
    {
        var found = new List<Evidence>();
        var seen = new HashSet<(Terminology, double)>();
        for (int i = 0; i < tokens.Length; i++)
            if ((StandsFor(tokens, i) ?? Placed(tokens, i) ?? Begun(tokens, i)) is { } evidence)
                found.Add(seen.Add((evidence.For, evidence.Weight)) ? evidence : evidence with { Weight = evidence.Weight / 10 });
        return found;
    }

    /// <summary>'ch 3 (counts as first dc)', '3 ch (counts as 1 tr)'.</summary>
    private static Evidence? StandsFor(Token[] tokens, int at)
    {
        int after = Said.Match(tokens, at);
        if (after < 0 || ChainsBefore(tokens, at) is not { } chains) return null;
        int stitch = after;
        Terminology? terminology = (chains, Height(tokens, ref stitch)) switch
        {
            (3, 'd') or (4, 't') => Terminology.Us,
            (1, 'd') or (3, 't') or (4, 'D') => Terminology.Uk,
            _ => null,
        };
        return terminology is { } found ? new Evidence(found, SaidWeight, TextSpan.FromTo(tokens[at].Span.Start, tokens[stitch - 1].Span.End)) : null;
    }

    /// <summary>'dc in 4th ch from hook'.</summary>
    private static Evidence? Placed(Token[] tokens, int at)
    {
        int place = at;
        char height = Height(tokens, ref place);
        int after = height is 'd' or 't' ? FromHook.Match(tokens, place) : -1;
        if (after < 0) return null;
        int nth = Array.FindIndex(tokens, place, after - place, token => token.Kind == TokenKind.Ordinal || token.Form.Ordinal is not null);
        Terminology? terminology = (nth < 0 ? 0 : tokens[nth].Kind == TokenKind.Ordinal ? tokens[nth].Value : tokens[nth].Form.Ordinal, height) switch
        {
            (4, 'd') or (5, 't') => Terminology.Us,
            (2, 'd') or (4, 't') => Terminology.Uk,
            _ => null,
        };
        return terminology is { } found ? new Evidence(found, PlacedWeight, TextSpan.FromTo(tokens[at].Span.Start, tokens[after - 1].Span.End)) : null;
    }

    /// <summary>'Row 2: Ch 3, dc in next dc': a row that begins with three chains goes on with the stitch of that height.</summary>
    private static Evidence? Begun(Token[] tokens, int at)
    {
        if (at == 0 || tokens[at - 1].Kind != TokenKind.Colon || Beginning.Match(tokens, at) is not (> 0 and int after) || tokens[at + 1].Value != 3) return null;
        int stitch = after < tokens.Length && tokens[after].Kind == TokenKind.Number ? after + 1 : after;
        return Height(tokens, ref stitch) switch
        {
            'd' => new Evidence(Terminology.Us, BegunWeight, TextSpan.FromTo(tokens[at].Span.Start, tokens[stitch - 1].Span.End)),
            't' => new Evidence(Terminology.Uk, BegunWeight, TextSpan.FromTo(tokens[at].Span.Start, tokens[stitch - 1].Span.End)),
            _ => null,
        };
    }

    /// <summary>'d' for a dc, 't' for a tr, 'D' for a double treble, blank for others; the place moves behind it.</summary>
    private static char Height(Token[] tokens, ref int at)
    {
        foreach ((Phrase name, char height) in new[] { (DoubleTreble, 'D'), (Treble, 't'), (Double, 'd') })
        {
            int after = name.Match(tokens, at);
            if (after < 0) continue;
            at = after;
            return height;
        }
        return ' ';
    }

    /// <summary>The chains that are spoken of: 'ch 3 (', 'ch-3', '3 ch ('.</summary>
    private static int? ChainsBefore(Token[] tokens, int at)
    {
        int last = at - 1;
        while (last >= 0 && tokens[last].Kind is TokenKind.Open or TokenKind.Dash or TokenKind.Comma) last--;
        if (last < 1) return null;
        if (tokens[last].Kind == TokenKind.Number && (tokens[last - 1].IsWord("ch") || tokens[last - 1].Kind == TokenKind.Hyphen && last > 1 && tokens[last - 2].IsWord("ch"))) return tokens[last].Value;
        return tokens[last].IsWord("ch") && tokens[last - 1].Kind == TokenKind.Number ? tokens[last - 1].Value : null;
    }
}
