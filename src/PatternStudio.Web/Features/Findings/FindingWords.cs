namespace PatternStudio.Web.Features.Findings;

/// <summary>Words of the pages on findings; the pages themselves are in docs/findings.</summary>
public sealed class FindingWords;
