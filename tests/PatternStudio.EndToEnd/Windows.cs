namespace PatternStudio.EndToEnd;

/// <summary>
/// The windows that every page is looked at in. Each takes a minute and more, so a desk by daylight and a phone by lamplight stand for all;
/// PATTERNSTUDIO_EVERY_WINDOW=1 (set by tests/screenshots.sh) adds the others.
/// </summary>
public static class Windows
{
    private static readonly (int Width, bool Dark)[] Usual = [(1440, false), (390, true)];
    private static readonly (int Width, bool Dark)[] Narrowest = [(390, true)];
    public static readonly (int Width, bool Dark)[] Every = [(1440, false), (1440, true), (820, false), (820, true), (390, false), (390, true)];

    public static TheoryData<int, bool> ToLookIn => EveryOr(Usual);

    /// <summary>For pages that are seen seldom: what fits a phone fits a desk.</summary>
    public static TheoryData<int, bool> ForRarePages => EveryOr(Narrowest);

    /// <summary>True where time does not matter.</summary>
    public static bool AreAllLookedAt => Environment.GetEnvironmentVariable("PATTERNSTUDIO_EVERY_WINDOW") == "1";

    private static TheoryData<int, bool> EveryOr((int Width, bool Dark)[] few) =>
        new((AreAllLookedAt ? Every : few).Select(window => (window.Width, window.Dark)));
}
