namespace PatternStudio.Craft.Writing.Completion;

/// <summary>Where words can stand in the line of a row.</summary>
internal enum Spot
{
    /// <summary>Nothing of a row is written yet.</summary>
    RowStart,

    /// <summary>Between two steps: after a comma, a star, an opening bracket.</summary>
    Step,

    /// <summary>After a stitch whose place is not told yet: 'sc ', '2 dc '.</summary>
    AfterStitch,

    /// <summary>After the brackets of steps that are worked several times: '[sc in next sc, ch 1] '.</summary>
    AfterBrackets,

    /// <summary>After 'in' or 'skip'.</summary>
    Place,

    /// <summary>Among the numbers of a size list or of a stated count.</summary>
    Numbers,

    /// <summary>In the midst of a step.</summary>
    Within,
}
