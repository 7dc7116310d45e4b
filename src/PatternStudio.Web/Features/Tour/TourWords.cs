namespace PatternStudio.Web.Features.Tour;

/// <summary>Names the resource file of the tour's words.</summary>
public sealed class TourWords;
