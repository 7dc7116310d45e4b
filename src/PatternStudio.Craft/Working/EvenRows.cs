using System.Globalization;
using System.Text.RegularExpressions;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>'Increase in every 9th sc, then work 1 row even.': rows told in the words of another, one stitch in each.</summary>
internal static partial class EvenRows
{
    /// <summary>Parts a row from the even rows told behind it.</summary>
    /// <returns>The row's own steps, how many even rows follow, and the steps told behind those.</returns>
    public static (EquatableArray<Step> Own, int Even, EquatableArray<Step> Behind, TextSpan Words) Split(EquatableArray<Step> steps)
    {
        for (int i = 0; i < steps.Count; i++)
            if (steps[i] is UncountedStep { Reason: UncountedReason.Rows } told && Number(told.Text) is { } even)
                return (steps.Take(i).ToEquatableArray(), even, steps.Skip(i + 1).ToEquatableArray(), told.Span);
        return (steps, 0, [], default);
    }

    /// <summary>How many rows 'then work 5 rows even' asks for; null where the words say something else.</summary>
    private static int? Number(string words) => Words().Match(words.ToLowerInvariant()) switch
    {
        { Success: false } => null,
        { } match when match.Groups[1].Success => int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture),
        _ => 1,
    };

    /// <summary>One stitch in each, of the kind that the row below is made of; null where that has several.</summary>
    public static EquatableArray<Step>? Steps(StitchId? stitch, TextSpan words)
    {
        if (stitch is not { } kind) return null;
        var each = Placement.EachToEnd(PlaceKind.Of(kind), words);
        return [new StitchStep(kind, SizedNumber.Of(1), null, each, words)];
    }

    [GeneratedRegex(@"^(?:then )?(?:continue |cont )?(?:to )?(?:work |working )?(?:([0-9]{1,3}) (?:rows?|rnds?|rounds?) |an? row |one row )?(?:even|evenly)\b(?! spaced)(?!,? (?:for|until|till|to)\b)")]
    private static partial Regex Words();
}
