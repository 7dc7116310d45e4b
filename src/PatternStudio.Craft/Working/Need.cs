namespace PatternStudio.Craft.Working;

/// <summary>How many places are needed, or left: stitches, and spaces.</summary>
internal readonly record struct Need(long Stitches, long Spaces)
{
    public bool IsNothing => Stitches == 0 && Spaces == 0;

    public static Need operator +(Need a, Need b) => new(a.Stitches + b.Stitches, a.Spaces + b.Spaces);

    public static Need operator -(Need a, Need b) => new(a.Stitches - b.Stitches, a.Spaces - b.Spaces);

    public static Need operator *(Need need, long times) => new(need.Stitches * times, need.Spaces * times);
}
