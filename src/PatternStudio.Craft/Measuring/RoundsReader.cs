using System.Globalization;
using System.Text.RegularExpressions;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>Reads a gauge of whole rounds, as motifs have it: 'Rnds 1 and 2 = 7 cm (2¾ in) across', 'first 3 rounds measure 4 in, 3 g'.</summary>
internal static partial class RoundsReader
{
    private const string Example = "'Rnds 1 and 2 = 7 cm across'";

    /// <summary>More rounds than any swatch has.</summary>
    private const int Most = 500;

    /// <summary>Null where the text does not begin with rounds; then it is a swatch of another kind.</summary>
    public static Parsed<Swatch>? Read(string text)
    {
        Match match = Begins().Match(text);
        if (!match.Success) return null;
        var all = new TextSpan(0, text.Length);
        int first = match.Groups["n"].Success ? 1 : Number(match.Groups["a"]);
        int last = match.Groups["n"].Success ? Number(match.Groups["n"]) : match.Groups["b"].Success ? Number(match.Groups["b"]) : first;
        if (first != 1) return Parsed.Trouble<Swatch>($"A gauge of rounds is measured from the centre on: begin with Rnd 1, as in {Example}.", all);
        if (last is < 1 or > Most) return Parsed.Trouble<Swatch>($"The rounds of the gauge are not numbered as rounds are. Write it like {Example}.", all);
        return Sizes(text, match.Index + match.Length, last, all);
    }

    private static Parsed<Swatch> Sizes(string text, int from, int rounds, TextSpan all)
    {
        string rest = text[from..];
        List<MeasureToken> tokens = MeasureScanner.Scan(rest);
        var lengths = new List<Length>();
        Mass? weight = null;
        for (int at = 0; at < tokens.Count; at++)
        {
            if (tokens[at].Number is not { } number) continue;
            string unit = at + 1 < tokens.Count ? tokens[at + 1].Word : "";
            if (tokens[at].Doubt is { } doubt) return Parsed.Trouble<Swatch>(doubt, all);
            if (at > 0 && MeasureReader.IsMinus(tokens[at - 1])) return Parsed.Trouble<Swatch>($"A measure below 0 can't be. Write the gauge like {Example}.", all);
            if (IsHook(tokens, at)) continue;
            if (Units.ToLength(number, unit) is { } length) lengths.Add(length);
            else if (Units.ToMass(number, unit) is { } mass) weight = mass;
            else if (!SharesUnit(tokens, at)) return Parsed.Trouble<Swatch>($"'{MeasureReader.Words(rest, tokens[at].Span)}' has no unit: is it cm, in or g? Write it like {Example}.", all);
        }

        if (lengths.Count == 0 || !lengths.TrueForAll(MeasureReader.Sensible)) return Parsed.Trouble<Swatch>($"The gauge does not say how wide the rounds are. Add it, as in {Example}.", all);
        return Parsed.Read(new Swatch(0, rounds, lengths[0], lengths[0], weight) { Kind = SwatchKind.Rounds, Over = new RowRange(1, rounds) });
    }

    private static bool IsHook(List<MeasureToken> tokens, int at) => tokens.Skip(at + 1).Take(6).Any(token => token.Word == "hook") && at + 1 < tokens.Count && tokens[at + 1].Word is "mm";

    /// <summary>'7 x 7 cm': the unit stands after the second number.</summary>
    private static bool SharesUnit(List<MeasureToken> tokens, int at) => at + 2 < tokens.Count && tokens[at + 1].Word is "x" or "×" or "by" && tokens[at + 2].Number is not null;

    private static int Number(Group group) => int.TryParse(group.Value, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : 0;

    [GeneratedRegex(@"^\s*(?:the\s+)?(?:(?:rnds?|rounds?)\.?\s+(?<a>[0-9]{1,5})(?:\s*(?:-|–|—|to|through|and|&)\s*(?<b>[0-9]{1,5}))?|first\s+(?<n>[0-9]{1,5})\s+(?:rnds?|rounds?)\.?)\s*(?:=|:|,|is|are|measures?|to)", RegexOptions.IgnoreCase)]
    private static partial Regex Begins();
}
