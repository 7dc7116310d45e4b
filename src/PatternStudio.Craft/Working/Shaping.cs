using System.Globalization;
using System.Text.RegularExpressions;

namespace PatternStudio.Craft.Working;

/// <summary>Where the stitches told by 'increasing 1 dc at beginning and end', 'increase in every 3rd st' fall.</summary>
internal enum ShapingPlace
{
    /// <summary>In the first and in the last place of the row.</summary>
    Ends,

    /// <summary>In every so many-eth place.</summary>
    Every,

    /// <summary>In the centre of each loop or scallop: that many more in the one place there.</summary>
    Centres,

    /// <summary>Spread over the row as evenly as they go: the words give their number, the maker their places.</summary>
    Spread,
}

/// <summary>Shaping told in words, where the number of stitches follows from the words.</summary>
/// <param name="Place">Where they fall.</param>
/// <param name="Number">For Every: which place; for Ends: how many at each end; for Spread: how many in all; for Centres: how many stitches stand in each.</param>
/// <param name="Decrease">True for fewer stitches instead of more.</param>
internal sealed partial record Shaping(ShapingPlace Place, int Number, bool Decrease)
{
    /// <summary>What the words say; null where they leave the number to the maker ('increasing as needed', 'gradually').</summary>
    public static Shaping? Of(string words)
    {
        string text = words.ToLowerInvariant().Split('(')[0];
        if (AtCentres().Match(text) is { Success: true } centres) return new Shaping(ShapingPlace.Centres, ToNumber(centres.Groups[1].Value), Decrease: false);
        if (!Shapes().IsMatch(text) || Open().IsMatch(text)) return null;
        bool decrease = Fewer().IsMatch(text);
        if (Every().Match(text) is { Success: true } every) return OfEvery(text, every, decrease);
        if (Spread().Match(text) is { Success: true } spread) return new Shaping(ShapingPlace.Spread, 2 * ToNumber(spread.Groups[1].Value), decrease);
        return Ends().IsMatch(text) ? new Shaping(ShapingPlace.Ends, First().Match(text) is { Success: true } number ? ToNumber(number.Value) : 1, decrease) : null;
    }

    /// <summary>'in every 4th st 12 times around each end', 'in every 3rd st of the 24 sts at each end', 'in every 5th sc'.</summary>
    private static Shaping? OfEvery(string text, Match every, bool decrease)
    {
        int nth = every.Groups[1].Success ? ToNumber(every.Groups[1].Value) : 2;
        if (TimesAtEachEnd().Match(text) is { Success: true } times) return new Shaping(ShapingPlace.Spread, 2 * ToNumber(times.Groups[1].Value), decrease);
        if (OfThoseAtEachEnd().Match(text) is { Success: true } those)
            return ToNumber(those.Groups[1].Value) % nth == 0 ? new Shaping(ShapingPlace.Spread, 2 * (ToNumber(those.Groups[1].Value) / nth), decrease) : null;
        return text.Contains("end", StringComparison.Ordinal) ? null : new Shaping(ShapingPlace.Every, nth, decrease);
    }

    private static int ToNumber(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^([0-9]{1,2}) (?:sts?|stitch(?:es)?) in (?:1|one|the) (?:st |stitch )?(?:in )?(?:the )?(?:cent(?:er|re)|middle) .*\beach\b")]
    private static partial Regex AtCentres();

    [GeneratedRegex(@"\b(inc|increas\w*|widen\w*|dec|decreas\w*|narrow\w*)\b")]
    private static partial Regex Shapes();

    [GeneratedRegex(@"\b(dec|decreas\w*|narrow\w*)\b")]
    private static partial Regex Fewer();

    [GeneratedRegex(@"\b(needed|gradual\w*|necessary|about|usual|directed|repeat|always|until|between|middle|center|centre)\b")]
    private static partial Regex Open();

    [GeneratedRegex(@"\bevery (?:other|([0-9]{1,3})(?:st|nd|rd|d|th))\b")]
    private static partial Regex Every();

    [GeneratedRegex(@"\b([0-9]{1,3}) times (?:at|around) each end\b")]
    private static partial Regex TimesAtEachEnd();

    [GeneratedRegex(@"\bof the ([0-9]{1,3}) [a-z. ]+(?:at|around) each end\b")]
    private static partial Regex OfThoseAtEachEnd();

    [GeneratedRegex(@"\b([0-9]{1,3}) [a-z. ]*evenly spaced at each end\b")]
    private static partial Regex Spread();

    [GeneratedRegex(@"\b(?:at|on) (?:the )?(?:beginning and end|beg and end|both ends|each end|each side|both sides)\b")]
    private static partial Regex Ends();

    [GeneratedRegex(@"[0-9]{1,3}")]
    private static partial Regex First();
}
