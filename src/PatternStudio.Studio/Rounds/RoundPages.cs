namespace PatternStudio.Studio.Rounds;

/// <summary>A round in the list of a design's rounds.</summary>
/// <param name="Open">True until it is over.</param>
/// <param name="Joined">Testers who have a link of their own or sent something.</param>
/// <param name="Reports">Reports so far.</param>
/// <param name="Unanswered">Remarks that wait for an answer.</param>
public sealed record RoundSummary(Guid Id, int Version, DateOnly Opens, DateOnly Ends, bool Open, int Joined, int Reports, int Unanswered);

/// <summary>A round with everything in it.</summary>
public sealed record RoundBook(
    Guid Id, Guid DesignId, string Title, RoundPlan Plan, bool Open, IReadOnlyList<KeptLink> Links, IReadOnlyList<KeptTester> Testers,
    IReadOnlyList<KeptReport> Reports, IReadOnlyList<KeptRemark> Remarks)
{
    /// <summary>False before its first day: links can be made, but don't open yet.</summary>
    public bool Begun { get; init; } = true;
}

/// <summary>A link as the designer sees it: its token can't be shown again.</summary>
/// <param name="TesterName">Whose it is; empty for the link for all.</param>
/// <param name="LastDay">The last day on which it opens; null for the round's.</param>
/// <param name="Over">True where that day is over.</param>
public sealed record KeptLink(Guid Id, string TesterName, DateTimeOffset Created, DateOnly? LastDay, bool Over, bool Revoked, int Reports, int MostReports);

/// <summary>A link just made: the only moment at which its token is known.</summary>
public sealed record MadeLink(Guid Id, string Token);

/// <summary>A tester.</summary>
/// <param name="Size">0-based size that she was asked for; null where she chooses.</param>
public sealed record KeptTester(Guid Id, string Name, int? Size, DateTimeOffset Added);

/// <summary>A report as kept.</summary>
public sealed record KeptReport(Guid Id, Guid TesterId, string TesterName, int Version, ReportDetails Details, DateTimeOffset Sent, DateTimeOffset Changed)
{
    public Guid? PhotoId { get; init; }
}

/// <summary>A remark as kept, with its answer.</summary>
public sealed record KeptRemark(Guid Id, Guid ReportId, string TesterName, int Version, RemarkDetails Details, Guid? PhotoId, DateTimeOffset Sent, RemarkAnswer Answer);
