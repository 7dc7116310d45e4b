using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Writing;

/// <summary>Words beside the stitches that the two terminologies say differently: the terms' own name, skip and miss, gauge and tension.</summary>
internal sealed class TermsWords(SourceText source, Token[] tokens, InstructionSpans instructions, Terminology to)
{
    private static readonly Dictionary<string, string> ToUk = new(StringComparer.Ordinal)
    {
        ["us"] = "UK", ["usa"] = "UK", ["american"] = "British",
        ["skip"] = "miss", ["skips"] = "misses", ["skipping"] = "missing", ["skipped"] = "missed", ["sk"] = "miss",
        ["gauge"] = "tension",
    };

    private static readonly Dictionary<string, string> ToUs = new(StringComparer.Ordinal)
    {
        ["uk"] = "US", ["british"] = "American", ["english"] = "American",
        ["miss"] = "skip", ["misses"] = "skips", ["missing"] = "skipping", ["missed"] = "skipped",
        ["tension"] = "gauge",
    };

    private static readonly HashSet<string> NamesOfTerms = new(StringComparer.Ordinal) { "us", "usa", "american", "uk", "british", "english" };

    /// <summary>What becomes of the word at a token; null where it stays.</summary>
    public TermsChange? At(int at)
    {
        if (tokens[at].Kind != TokenKind.Word) return null;
        string written = source.Slice(tokens[at].Span);
        string word = written.ToLowerInvariant();
        if (!(to == Terminology.Uk ? ToUk : ToUs).TryGetValue(word, out string? other) || !IsMeant(at, word)) return null;
        string name = NamesOfTerms.Contains(word) ? other : char.IsUpper(written[0]) ? char.ToUpperInvariant(other[0]) + other[1..] : other;
        return new TermsChange(new TextEdit(tokens[at].Span, name), at + 1);
    }

    private bool IsMeant(int at, string word) => word switch
    {
        "gauge" or "tension" => IsLabel(at) || FollowsObtain(at),
        _ when NamesOfTerms.Contains(word) => NamesTerms(at),
        _ => instructions.Hold(tokens[at].Span),
    };

    /// <summary>'US terms', 'UK crochet terminology', 'Terms: US'.</summary>
    private bool NamesTerms(int at) =>
        IsTerms(at + 1) || (Word(at + 1) is "crochet" && IsTerms(at + 2)) || IsTerms(at - 1) || (IsTerms(at - 2) && tokens[at - 1].Kind == TokenKind.Colon);

    private bool IsTerms(int at) => Word(at) is "terms" or "term" or "terminology" or "terminologies" or "abbreviations";

    /// <summary>'Gauge:', '## Gauge': the first word of its line, with a colon after it or nothing.</summary>
    private bool IsLabel(int at) =>
        tokens[at].StartsLine && (at + 1 == tokens.Length || tokens[at + 1].StartsLine || tokens[at + 1].Kind is TokenKind.Colon or TokenKind.Dot or TokenKind.Dash);

    /// <summary>'size to obtain gauge', 'to meet the tension': not 'keep an even tension', which is the yarn's.</summary>
    private bool FollowsObtain(int at) =>
        IsObtain(Word(at - 1)) || (Word(at - 1) is "the" or "correct" or "your" or "this" or "given" && IsObtain(Word(at - 2)));

    private static bool IsObtain(string word) => word is "obtain" or "get" or "check" or "meet" or "match" or "achieve" or "give";

    private string Word(int at) => at >= 0 && at < tokens.Length && tokens[at].Kind == TokenKind.Word ? source.Slice(tokens[at].Span).ToLowerInvariant() : "";
}
