namespace PatternStudio.Craft.Measuring.Makers;

/// <summary>How one maker's hook did.</summary>
public enum HookVerdict
{
    /// <summary>Her stitches are as wide as printed, to 3 %.</summary>
    Met,

    /// <summary>More stitches to 10 cm than printed: a larger hook.</summary>
    TooTight,

    /// <summary>Fewer stitches to 10 cm than printed: a smaller hook.</summary>
    TooLoose,
}

/// <summary>The hook that one maker used and what she got with it.</summary>
/// <param name="Maker">Who.</param>
/// <param name="Hook">The hook.</param>
/// <param name="Ratio">Her stitches to 10 cm beside the printed ones.</param>
public sealed record HookUse(string Maker, HookSize Hook, double Ratio)
{
    /// <summary>Half a stitch in sixteen: no tape tells less.</summary>
    internal const double SameGauge = 0.03125;

    public HookVerdict Verdict => Math.Abs(Ratio - 1) <= SameGauge ? HookVerdict.Met : Ratio > 1 ? HookVerdict.TooTight : HookVerdict.TooLoose;
}
