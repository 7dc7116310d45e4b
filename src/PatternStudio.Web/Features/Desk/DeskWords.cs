namespace PatternStudio.Web.Features.Desk;

/// <summary>Names the resource file of the design desk's words.</summary>
public sealed class DeskWords;
