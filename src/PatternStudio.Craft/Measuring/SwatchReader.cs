using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>
/// Reads a swatch into raw facts — counts, lengths, a weight — and judges them together at the end, so that '4 in square = 13 sts, 7 rows'
/// reads as well as the usual order.
/// </summary>
/// <param name="text">What was typed.</param>
/// <param name="terms">Whose words stitches are named in.</param>
internal sealed class SwatchReader(string text, Terminology terms)
{
    private const string Example = "'16 sts, 18 rows = 10 x 10 cm, 12 g'";
    private static readonly HashSet<string> Joiners =
        ["=", ",", ";", ":", "x", "×", "*", "&", "+", "and", "by", "over", "to", "per", "measure", "measures", "make", "makes", "is", "equals", "weighs", "weight", "square", "sq", ")", "blocked", "weighing", "in"];

    private readonly List<MeasureToken> tokens = MeasureScanner.Scan(text);
    private readonly List<Length> lengths = [];
    private double? stitches;
    private double? rows;
    private StitchId? stitch;
    private Mass? weight;
    private (string Message, TextSpan Span)? trouble;

    public Parsed<Swatch> Read()
    {
        if (tokens.Count > 0 && tokens[0].Word is "rnd" or "rnds" or "round" or "rounds") return InRounds();
        for (int at = 0; at < tokens.Count && trouble is null;)
            at = IsRemark(at) ? ReadRemark(at)
                : tokens[at].Word == "(" ? SkipBrackets(at)
                : tokens[at].Word == "/" && lengths.Count > 0 ? at + 3
                : tokens[at].Number is { } number ? ReadQuantity(at, number)
                : ReadJoiner(at);
        return trouble is { } told ? Parsed.Trouble<Swatch>(told.Message, told.Span) : Judge();
    }

    private Parsed<Swatch> InRounds() => Parsed.Trouble<Swatch>(
        $"A gauge of whole rounds can't be used yet. Work a swatch in rows of the same stitch and write it like {Example}.", new TextSpan(0, text.Length));

    /// <summary>'10 cm (4 in)': what stands in brackets after a length says the same in the other unit.</summary>
    private int SkipBrackets(int at)
    {
        if (lengths.Count == 0) return at + 1;
        int close = tokens.FindIndex(at, token => token.Word == ")");
        return close < 0 ? at + 1 : close + 1;
    }

    /// <summary>Words after all counts and lengths: 'in pattern (Row 3)', 'over treble', 'after blocking'. No measure may hide in them.</summary>
    private bool IsRemark(int at) =>
        lengths.Count > 0 && stitches is not null && rows is not null && tokens[at].Word.Length > 0 && char.IsLetter(tokens[at].Word[0]) && !MeasureFollows(at);

    private bool MeasureFollows(int at)
    {
        for (int i = at; i + 1 < tokens.Count; i++)
            if (tokens[i].Number is { } number && (Units.ToMass(number, tokens[i + 1].Word) is not null || Units.ToLength(number, tokens[i + 1].Word) is not null))
                return true;
        return false;
    }

    /// <summary>A stitch named there is the swatch's; everything else is the maker's note.</summary>
    private int ReadRemark(int at)
    {
        bool names = tokens[at].Word is "in" or "over" or "of" && at + 1 < tokens.Count;
        string words = names ? text[tokens[at + 1].Span.Start..].Trim().TrimEnd('.', ')') : "";
        if (names) stitch ??= Vocabulary.Standard.Meaning(words, terms);
        return tokens.Count;
    }

    private int ReadJoiner(int at)
    {
        if (!Joiners.Contains(tokens[at].Word))
            trouble = ($"'{Words(at)}' was not understood in the swatch. Write it like {Example}.", tokens[at].Span);
        return at + 1;
    }

    private int ReadQuantity(int at, double number)
    {
        int unit = UnitAfter(at);
        if (unit < 0)
        {
            trouble = ($"'{Words(at)}' has no unit: is it stitches, rows, cm, in or g? Write it like {Example}.", tokens[at].Span);
            return at + 1;
        }
        Take(number, tokens[unit]);
        return unit == at + 1 ? at + 2 : at + 1;
    }

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
        if (Units.ToLength(number, unit.Word) is { } length) lengths.Add(length);
        else if (Units.ToMass(number, unit.Word) is { } mass) weight = mass;
        else if (unit.Word is "row" or "rows" or "r" or "rnd" or "rnds" or "round" or "rounds") rows = number;
        else if (unit.Word is "st" or "sts" or "stitch" or "stitches") stitches = number;
        else if (char.IsLetter(unit.Word[0])) (stitches, stitch) = (number, Vocabulary.Standard.Meaning(unit.Word, terms) ?? new StitchId(unit.Word));
        else trouble = ($"'{unit.Word}' was not understood in the swatch. Write it like {Example}.", unit.Span);
    }

    private Parsed<Swatch> Judge()
    {
        var all = new TextSpan(0, text.Length);
        if (stitches is not > 0) return Missing("how many stitches there are", "'16 sts'", all);
        if (rows is not > 0) return Missing("how many rows there are", "'18 rows'", all);
        if (lengths.Count is 0 or > 2) return Missing("the width and height that they measure", "'= 10 x 10 cm'", all);
        if (!lengths.TrueForAll(MeasureReader.Sensible)) return Missing("a width and height above 0", "'= 10 x 10 cm'", all);
        if (weight is { Grams: <= 0 }) return Missing("a weight above 0, or none", "'12 g'", all);
        return Parsed.Read(new Swatch(stitches.Value, rows.Value, lengths[0], lengths[^1], weight) { Stitch = stitch });
    }

    private static Parsed<Swatch> Missing(string what, string example, TextSpan span) =>
        Parsed.Trouble<Swatch>($"The swatch does not say {what}. Add it, such as {example}; the whole swatch reads like {Example}.", span);

    private string Words(int at) => MeasureReader.Words(text, tokens[at].Span);
}
