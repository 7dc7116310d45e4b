namespace PatternStudio.Web.Features.YarnShelf;

/// <summary>Names the resource file of the yarns' words.</summary>
public sealed class YarnWords;
