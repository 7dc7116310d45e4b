namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>Names the resource file of the swatches' words.</summary>
public sealed class SwatchWords;
