namespace PatternStudio.Studio;

/// <summary>
/// Who asks, and in which studio. Every operation checks that the account is a member of the studio, and touches nothing outside it.
/// </summary>
/// <param name="AccountId">The signed-in account.</param>
/// <param name="StudioId">The studio it works in.</param>
public sealed record Caller(Guid AccountId, Guid StudioId);
