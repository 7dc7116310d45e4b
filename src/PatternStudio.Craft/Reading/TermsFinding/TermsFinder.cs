using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.TermsFinding;

/// <summary>Finds whose words a pattern uses: what the text states, else the words that exist in one terminology alone.</summary>
internal static class TermsFinder
{
    private static readonly Phrase Us = new("us|usa|american crochet? terms|terminology|term|abbreviations|terminologies");
    private static readonly Phrase Uk = new("uk|british|english crochet? terms|terminology|term|abbreviations|terminologies");

    private static readonly Phrase UsNamed = new("terms : us|usa|american");
    private static readonly Phrase UkNamed = new("terms : uk|british|english");

    public static TermsDecision Decide(Token[] tokens, Terminology? told)
    {
        List<Evidence> evidence = [.. EvidenceWords.In(tokens), .. HeightEvidence.In(tokens)];
        List<Evidence> stated = Stated(tokens);
        if (told is { } known) return Decision(known, TermsOrigin.Told, 1, evidence);
        if (stated.Count > 0) return Decision(stated[0].For, TermsOrigin.Stated, 1, [.. stated, .. evidence]);
        return Weighed(evidence);
    }

    private static List<Evidence> Stated(Token[] tokens)
    {
        var stated = new List<Evidence>();
        for (int i = 0; i < tokens.Length; i++)
        {
            if (tokens[i].Kind != TokenKind.Word || tokens[i].Word.Length > 8) continue;
            if (StatedAt(tokens, i) is { } found) stated.Add(new Evidence(found, 10, tokens[i].Span));
        }
        return stated;
    }

    /// <summary>'US terms', 'Terms: British': what the words that begin here state; null for other words.</summary>
    public static Terminology? StatedAt(ReadOnlySpan<Token> tokens, int at) =>
        Us.Match(tokens, at) >= 0 || UsNamed.Match(tokens, at) >= 0 ? Terminology.Us : Uk.Match(tokens, at) >= 0 || UkNamed.Match(tokens, at) >= 0 ? Terminology.Uk : null;

    private static TermsDecision Weighed(List<Evidence> evidence)
    {
        double us = evidence.Where(item => item.For == Terminology.Us).Sum(item => item.Weight);
        double uk = evidence.Where(item => item.For == Terminology.Uk).Sum(item => item.Weight);
        if (us == 0 && uk == 0) return new TermsDecision(Terminology.Us, TermsOrigin.Assumed, 0.5, []);
        Terminology found = uk > us ? Terminology.Uk : Terminology.Us;
        double sure = Math.Max(us, uk) / (us + uk) * Math.Min(1, 0.6 + (Math.Max(us, uk) / 20));
        return Decision(found, TermsOrigin.Found, sure, evidence);
    }

    private static TermsDecision Decision(Terminology terminology, TermsOrigin origin, double sureness, List<Evidence> evidence) =>
        new(terminology, origin, sureness, Spans(evidence.Where(item => item.For == terminology)))
        {
            Against = Spans(evidence.Where(item => item.For != terminology)),
        };

    private static EquatableArray<TextSpan> Spans(IEnumerable<Evidence> evidence) =>
        evidence.OrderByDescending(item => item.Weight).Select(item => item.Span).Take(100).ToEquatableArray();
}

/// <summary>A word that speaks for a terminology.</summary>
internal readonly record struct Evidence(Terminology For, double Weight, TextSpan Span);
