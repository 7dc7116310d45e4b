namespace PatternStudio.Craft.Reading;

/// <summary>What is read at most, so that no text takes unbounded time or memory. All far above what any pattern needs.</summary>
public static class ReadingLimits
{
    /// <summary>Characters of a text: 2 million, about 1 000 printed pages.</summary>
    public const int Characters = 2_000_000;

    /// <summary>Brackets and repeats inside each other.</summary>
    public const int Nesting = 32;

    /// <summary>The largest number that an instruction may name.</summary>
    public const int Number = 1_000_000;
}
