namespace PatternStudio.Craft.Checking;

/// <summary>
/// Every finding's code and how much it matters; <c>docs/findings</c> has a page on each. A code keeps its meaning for ever; one that is given
/// up stays listed here as a comment.
/// </summary>
public static class FindingCodes
{
    public const string CountDiffers = "count-differs";
    public const string PastTheEnd = "past-the-end";
    public const string StitchesLeft = "stitches-left";
    public const string RepeatUneven = "repeat-uneven";
    public const string OtherStitch = "other-stitch";
    public const string NoSuchPlace = "no-such-place";
    public const string TurningChainDisagrees = "turning-chain-disagrees";
    public const string JoinToNothing = "join-to-nothing";
    public const string NoSuchRow = "no-such-row";
    public const string RowNumberRepeated = "row-number-repeated";
    public const string RowNumberMissing = "row-number-missing";
    public const string NoFoundation = "no-foundation";
    public const string LoopCountDiffers = "loop-count-differs";
    public const string LoopsLeft = "loops-left";
    public const string StitchUndefined = "stitch-undefined";
    public const string StitchUnused = "stitch-unused";
    public const string SizeListLength = "size-list-length";
    public const string RepeatWithoutStar = "repeat-without-star";
    public const string StarWithoutRepeat = "star-without-repeat";
    public const string BracketOpen = "bracket-open";
    public const string OtherTerms = "other-terms";
    public const string CmInchesDiffer = "cm-inches-differ";
    public const string MultipleDiffers = "multiple-differs";
    public const string NotRead = "not-read";
    public const string NotWorked = "not-worked";
    public const string SampleFoundation = "sample-foundation";
    public const string NothingToCheck = "nothing-to-check";
    public const string TooLarge = "too-large";
    public const string NotText = "not-text";

    private static readonly IReadOnlyDictionary<string, Severity> Severities = new Dictionary<string, Severity>
    {
        [CountDiffers] = Severity.Error,
        [PastTheEnd] = Severity.Error,
        [StitchesLeft] = Severity.Error,
        [RepeatUneven] = Severity.Error,
        [OtherStitch] = Severity.Error,
        [NoSuchPlace] = Severity.Error,
        [TurningChainDisagrees] = Severity.Error,
        [JoinToNothing] = Severity.Error,
        [NoSuchRow] = Severity.Error,
        [RowNumberRepeated] = Severity.Error,
        [RowNumberMissing] = Severity.Warning,
        [NoFoundation] = Severity.Error,
        [LoopCountDiffers] = Severity.Error,
        [LoopsLeft] = Severity.Error,
        [StitchUndefined] = Severity.Warning,
        [StitchUnused] = Severity.Warning,
        [SizeListLength] = Severity.Error,
        [RepeatWithoutStar] = Severity.Error,
        [StarWithoutRepeat] = Severity.Warning,
        [BracketOpen] = Severity.Warning,
        [OtherTerms] = Severity.Warning,
        [CmInchesDiffer] = Severity.Warning,
        [MultipleDiffers] = Severity.Warning,
        [NotRead] = Severity.Warning,
        [NotWorked] = Severity.Note,
        [SampleFoundation] = Severity.Note,
        [NothingToCheck] = Severity.Error,
        [TooLarge] = Severity.Error,
        [NotText] = Severity.Error,
    };

    /// <summary>Every code.</summary>
    public static IEnumerable<string> All => Severities.Keys;

    /// <summary>How much a finding of a code matters.</summary>
    /// <exception cref="KeyNotFoundException">The code is none of <see cref="All"/>.</exception>
    public static Severity SeverityOf(string code) => Severities[code];
}
