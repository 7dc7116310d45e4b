namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>What a definition may hold at most, so that no text takes unbounded time or memory; far above any stitch.</summary>
internal static class MotionLimits
{
    /// <summary>Motions of one stitch, repeats worked out.</summary>
    public const int Motions = 2_000;

    /// <summary>The largest number that a definition may name.</summary>
    public const int Number = 1_000;
}
