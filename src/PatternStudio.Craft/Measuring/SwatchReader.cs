using System.Globalization;
using System.Text.RegularExpressions;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>
/// Reads a swatch into raw facts — counts, lengths, a weight — and judges them together at the end, so that '4 in square = 13 sts, 7 rows'
/// reads as well as the usual order.
/// </summary>
/// <param name="text">What was typed.</param>
/// <param name="terms">Whose words stitches are named in.</param>
internal sealed partial class SwatchReader(string text, Terminology terms)
{
    private const string Example = "'16 sts, 18 rows = 10 x 10 cm, 12 g'";

    /// <summary>More stitches or rows than any swatch has.</summary>
    private const double MostCounted = 100_000;

    private static readonly HashSet<string> Joiners =
    [
        "=", ",", ";", ":", ".", "x", "×", "*", "&", "+", "and", "by", "over", "to", "per", "measure", "measures", "measured", "make", "makes", "is", "are", "equals", "weighs", "weight", "square", "sq", "(", ")",
        "blocked", "weighing", "in", "the", "of", "with", "a", "hook", "each", "wide", "high", "tall", "approx", "about", "repeat", "repeats",
    ];

    private readonly List<MeasureToken> tokens = MeasureScanner.Scan(text);
    private readonly List<Length> lengths = [];
    private readonly List<Length> before = [];
    private readonly SwatchCounts counts = new();
    private int clause;
    private bool isBefore;
    private StitchId? stitch;
    private RowRange? over;
    private HookSize? hook;
    private Mass? weight;
    private (string Message, TextSpan Span)? trouble;

    /// <summary>True where a gauge without rows is read as one of unknown height.</summary>
    public bool RowsMayLack { get; init; }

    public Parsed<Swatch> Read()
    {
        for (int at = 0; at < tokens.Count && trouble is null;)
            at = IsBlocking(at) ? ReadBlocking(at)
                : NamesRows(at) ? ReadRowsNamed(at)
                : IsRemark(at) ? ReadRemark(at)
                : tokens[at].Word == "(" ? SkipBrackets(at)
                : tokens[at].Word == "/" && lengths.Count > 0 ? at + 3
                : NumberAt(at) is { } number ? ReadQuantity(at, number)
                : ReadJoiner(at);
        return trouble is { } told ? Parsed.Trouble<Swatch>(told.Message, told.Span) : Judge();
    }

    private double? NumberAt(int at) => tokens[at].Number ?? (tokens[at].Word == "one" ? 1 : null);

    /// <summary>'before blocking', 'unblocked'; 'after blocking' ends it.</summary>
    private bool IsBlocking(int at) =>
        tokens[at].Word is "unblocked" or "blocked" || (tokens[at].Word is "before" or "after" && at + 1 < tokens.Count && tokens[at + 1].Word is "blocking");

    /// <summary>The words stand before their size ('unblocked 11 x 10 cm') or after it ('11 x 10 cm before blocking').</summary>
    private int ReadBlocking(int at)
    {
        int next = tokens[at].Word is "before" or "after" ? at + 2 : at + 1;
        isBefore = tokens[at].Word is "before" or "unblocked";
        bool sizeFollows = next < tokens.Count && (tokens[next].Number is not null || tokens[next].Word is ":" or "=");
        if (!sizeFollows && isBefore)
        {
            before.AddRange(lengths.Skip(clause));
            lengths.RemoveRange(Math.Min(clause, lengths.Count), lengths.Count - Math.Min(clause, lengths.Count));
        }

        if (!sizeFollows) isBefore = false;
        return next;
    }

    /// <summary>'10 cm (4 in)': what stands in brackets after a length says the same in the other unit; '(24 sts)' after repeats says how many stitches they are.</summary>
    private int SkipBrackets(int at)
    {
        int close = tokens.FindIndex(at, token => token.Word == ")");
        if (close < 0) return at + 1;
        if (close == at + 3 && tokens[at + 1].Number is { } number && SwatchCounts.IsStitches(tokens[at + 2].Word) && counts.IsRepeats)
        {
            counts.InRepeats = number;
            return close + 1;
        }

        return lengths.Count == 0 && before.Count == 0 ? at + 1 : close + 1;
    }

    /// <summary>Words after all counts and lengths: 'in pattern (Row 3)', 'over treble', 'after blocking'. No measure may hide in them.</summary>
    private bool IsRemark(int at) =>
        lengths.Count > 0 && counts.Across is not null && (counts.Up is not null || RowsMayLack) && tokens[at].Word.Length > 0 && char.IsLetter(tokens[at].Word[0]) && !MeasureFollows(at);

    private bool MeasureFollows(int at)
    {
        for (int i = at; i + 1 < tokens.Count; i++)
            if (tokens[i].Number is { } number && (Units.ToMass(number, tokens[i + 1].Word) is not null || Units.ToLength(number, tokens[i + 1].Word) is not null || SwatchCounts.IsRows(tokens[i + 1].Word)))
                return true;
        return false;
    }

    /// <summary>A stitch or rows named there are the swatch's; everything else is the maker's note.</summary>
    private int ReadRemark(int at)
    {
        bool names = tokens[at].Word is "in" or "over" or "of" && at + 1 < tokens.Count;
        string words = names ? text[tokens[at + 1].Span.Start..].Trim().TrimEnd('.', ')') : "";
        if (names) stitch ??= Vocabulary.Standard.Meaning(words, terms);
        int rowsAt = tokens.FindIndex(at, token => SwatchCounts.IsRows(token.Word));
        if (rowsAt >= 0 && NamesRows(rowsAt)) ReadRowsNamed(rowsAt);
        return tokens.Count;
    }

    /// <summary>'Rows 2 and 3', 'Row 3': a number after the word names rows, one before it counts them.</summary>
    private bool NamesRows(int at) =>
        SwatchCounts.IsRows(tokens[at].Word) && at + 1 < tokens.Count && tokens[at + 1].Number is not null && (at == 0 || tokens[at - 1].Number is null)
        && RowsNamed().IsMatch(text[tokens[at].Span.Start..]);

    private int ReadRowsNamed(int at)
    {
        Match named = RowsNamed().Match(text[tokens[at].Span.Start..]);
        int first = int.Parse(named.Groups["a"].Value, CultureInfo.InvariantCulture);
        int last = named.Groups["b"].Success ? int.Parse(named.Groups["b"].Value, CultureInfo.InvariantCulture) : first;
        over = new RowRange(Math.Min(first, last), Math.Max(first, last));
        int end = tokens[at].Span.Start + named.Length, next = at;
        while (next < tokens.Count && tokens[next].Span.Start < end) next++;
        return next;
    }

    private int ReadJoiner(int at)
    {
        if (tokens[at].Word is "," or ";" or "=")
        {
            clause = lengths.Count;
            isBefore &= tokens[at].Word == "=";
        }

        if (!Joiners.Contains(tokens[at].Word)) Complain($"'{Words(at)}' was not understood in the swatch. Write it like {Example}.", at);
        return at + 1;
    }

    private int ReadQuantity(int at, double number)
    {
        if (tokens[at].Doubt is { } doubt) Complain(doubt, at);
        if (TilesEachWay(at) is { } down)
        {
            counts.TakeTiles(number, down);
            return at + 4;
        }

        int unit = UnitAfter(at);
        if (unit < 0)
        {
            Complain($"'{Words(at)}' has no unit: is it stitches, rows, cm, in or g? Write it like {Example}.", at);
            return at + 1;
        }

        if (tokens[unit].Word == "mm" && HookEnd(unit) is { } end && end > 0)
        {
            hook = new HookSize(number);
            return end;
        }

        Take(number, tokens[unit]);
        return unit == at + 1 ? at + 2 : at + 1;
    }

    /// <summary>Where '5 mm hook', '4.5 mm (US 7) hook' end; 0 where no hook is meant.</summary>
    private int HookEnd(int unit)
    {
        int at = unit + 1;
        if (at < tokens.Count && tokens[at].Word == "(") at = tokens.FindIndex(at, token => token.Word == ")") + 1;
        return at > 0 && at < tokens.Count && tokens[at].Word == "hook" ? at + 1 : 0;
    }

    /// <summary>'5 x 5 tiles'.</summary>
    private double? TilesEachWay(int at) =>
        at + 3 < tokens.Count && tokens[at + 1].Word is "x" or "×" or "by" && SwatchCounts.IsTiles(tokens[at + 3].Word) ? tokens[at + 2].Number : null;

    /// <summary>The unit of a number, which in '10 x 10 cm' stands after the second number.</summary>
    private int UnitAfter(int at)
    {
        if (at + 1 >= tokens.Count) return -1;
        bool shared = tokens[at + 1].Word is "x" or "×" or "*" or "by" && at + 3 < tokens.Count && tokens[at + 2].Number is not null
            && Units.ToLength(1, tokens[at + 3].Word) is not null;
        if (shared) return at + 3;
        return tokens[at + 1].Number is null && tokens[at + 1].Word is not ("," or "=" or ";" or "x" or "×") ? at + 1 : -1;
    }

    private void Take(double number, MeasureToken unit)
    {
        if (Units.ToLength(number, unit.Word) is { } length) (isBefore ? before : lengths).Add(length);
        else if (Units.ToMass(number, unit.Word) is { } mass) weight = mass;
        else if (counts.Take(number, unit.Word)) return;
        else if (char.IsLetter(unit.Word[0])) (counts.Across, stitch) = (number, Vocabulary.Standard.Meaning(unit.Word, terms) ?? new StitchId(unit.Word));
        else trouble = ($"'{unit.Word}' was not understood in the swatch. Write it like {Example}.", unit.Span);
    }

    private Parsed<Swatch> Judge()
    {
        var all = new TextSpan(0, text.Length);
        if (counts.Across is not (> 0 and <= MostCounted)) return Missing("how many stitches there are", "'16 sts'", all);
        if (counts.Up is not (> 0 and <= MostCounted) && !(RowsMayLack && counts.Up is null)) return Missing("how many rows there are", "'18 rows'", all);
        if (lengths.Count is 0 or > 2) return Missing("the width and height that they measure", "'= 10 x 10 cm'", all);
        if (!lengths.Concat(before).All(MeasureReader.Sensible)) return Missing("a width and height above 0", "'= 10 x 10 cm'", all);
        return Parsed.Read(new Swatch(counts.Across.Value, counts.Up ?? 0, lengths[0], lengths[^1], weight)
        {
            Kind = counts.Kind,
            StitchesPerRepeat = counts.PerRepeat,
            Stitch = stitch,
            Over = over,
            Hook = hook,
            BeforeBlocking = before.Count > 0 ? new FabricSize(before[0], before[^1]) : null,
        });
    }

    private static Parsed<Swatch> Missing(string what, string example, TextSpan span) =>
        Parsed.Trouble<Swatch>($"The swatch does not say {what}. Add it, such as {example}; the whole swatch reads like {Example}.", span);

    private void Complain(string message, int at) => trouble ??= (message, tokens[at].Span);

    private string Words(int at) => MeasureReader.Words(text, tokens[at].Span);

    [GeneratedRegex(@"^(?:rows?|r|rnds?|rounds?)\.?\s+(?<a>[0-9]{1,5})(?:\s*(?:-|–|to|and|&)\s*(?<b>[0-9]{1,5})\b(?!\s*(?:cm|mm|in|g|oz|st|sts|row|rows)\b))?", RegexOptions.IgnoreCase)]
    private static partial Regex RowsNamed();
}
