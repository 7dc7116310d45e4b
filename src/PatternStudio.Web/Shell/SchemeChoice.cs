namespace PatternStudio.Web.Shell;

/// <summary>Light or dark, as the browser told when the page was asked for.</summary>
public sealed record SchemeChoice(bool Dark);
