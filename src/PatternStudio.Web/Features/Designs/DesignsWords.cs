namespace PatternStudio.Web.Features.Designs;

/// <summary>Names the resource file of the list of designs.</summary>
public sealed class DesignsWords;
