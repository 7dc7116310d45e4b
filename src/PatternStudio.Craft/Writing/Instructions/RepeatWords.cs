using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Writing.Instructions;

/// <summary>
/// Writes repeats with the marks they were written with; a star inside a star becomes brackets, as today's house styles have it, for
/// nobody can tell which star 'rep from *' means.
/// </summary>
/// <param name="steps">Writes the steps beside and inside brackets.</param>
/// <param name="inside">Writes the steps inside stars.</param>
internal sealed class RepeatWords(StepWords steps, StepWords inside, PlaceWords places)
{
    private bool InAStar => ReferenceEquals(steps, inside);

    public string Of(RepeatStep repeat) => Inner(repeat) switch
    {
        // 'Sc in each st and (sc, ch 1, sc) in each ch-1 sp around': no brackets were written about the whole.
        RepeatMark.Brackets when repeat.Steps is [EitherStep either] && either.Span == repeat.Span => steps.Of(either),
        RepeatMark.Brackets => $"[{steps.List(repeat.Steps)}] {places.Of(repeat.Extent)}",
        RepeatMark.Parentheses => $"({steps.List(repeat.Steps)}) {places.Of(repeat.Extent)}",
        RepeatMark.Braces => $"{{{steps.List(repeat.Steps)}}} {places.Of(repeat.Extent)}",
        RepeatMark.StarPair when repeat.Extent.Kind != ExtentKind.Unstated => $"*{steps.List(repeat.Steps)}* {places.Of(repeat.Extent)}",
        RepeatMark.Words => $"{steps.List(repeat.Steps)}; rep {HowFar(repeat.Extent)}".TrimEnd() + Ending(repeat, ""),
        _ => Starred(repeat, repeat.Mark switch { RepeatMark.DoubleStar => "**", RepeatMark.Dagger => "†", _ => "*" }),
    };

    private RepeatMark Inner(RepeatStep repeat) =>
        InAStar && repeat is { LastStopsAfter: null, Ending.IsEmpty: true, Extent.Kind: ExtentKind.Times or ExtentKind.ToEnd } && !IsBracketed(repeat.Mark)
            ? RepeatMark.Brackets
            : repeat.Mark;

    private static bool IsBracketed(RepeatMark mark) => mark is RepeatMark.Brackets or RepeatMark.Parentheses or RepeatMark.Braces;

    private string Starred(RepeatStep repeat, string mark)
    {
        string passage = repeat.LastStopsAfter is { } stops && stops < repeat.Steps.Count
            ? $"{inside.List([.. repeat.Steps.Take(stops)])}, **{inside.List([.. repeat.Steps.Skip(stops)])}"
            : inside.List(repeat.Steps);
        return $"{mark}{passage}; rep from {mark} {HowFar(repeat.Extent)}".TrimEnd() + Ending(repeat, mark);
    }

    private string HowFar(Extent extent) =>
        extent.Kind == ExtentKind.Times ? Again(NumberWords.OneLess(extent.Count!)) : places.Of(extent);

    /// <summary>'once more' and '3 times more': the first has been worked.</summary>
    private static string Again(SizedNumber times) => NumberWords.IsOne(times) ? "once more" : NumberWords.Of(times) + " more times";

    private string Ending(RepeatStep repeat, string mark)
    {
        if (repeat.LastStopsAfter is not null && mark.Length > 0) return ", ending last rep at **";
        return repeat.Ending.IsEmpty ? "" : $", ending with {steps.List(repeat.Ending)}";
    }
}
