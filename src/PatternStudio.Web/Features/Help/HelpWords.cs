namespace PatternStudio.Web.Features.Help;

/// <summary>Names the resource file of the words about help.</summary>
public sealed class HelpWords;
