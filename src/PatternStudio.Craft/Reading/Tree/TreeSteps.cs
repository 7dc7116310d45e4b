namespace PatternStudio.Craft.Reading.Tree;

/// <summary>Goes through every step of a pattern, those inside groups and repeats included.</summary>
internal static class TreeSteps
{
    /// <summary>Every step of every row.</summary>
    public static IEnumerable<Step> OfRows(Pattern pattern) =>
        pattern.Pieces.SelectMany(piece => piece.Items).OfType<RowInstruction>().SelectMany(row => row.Steps).SelectMany(WithInner);

    /// <summary>A step and all the steps inside it.</summary>
    public static IEnumerable<Step> WithInner(Step step) => step switch
    {
        GroupStep group => group.Steps.SelectMany(WithInner).Prepend(step),
        RepeatStep repeat => repeat.Steps.Concat(repeat.Ending).SelectMany(WithInner).Prepend(step),
        EitherStep either => WithInner(either.First).Concat(WithInner(either.Other)).Prepend(step),
        _ => [step],
    };
}
