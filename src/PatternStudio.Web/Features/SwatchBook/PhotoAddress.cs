namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>Where the browser finds a photo.</summary>
public static class PhotoAddress
{
    public static string Of(Guid photo) => $"photos/{photo}";

    /// <summary>The one for lists.</summary>
    public static string Small(Guid photo) => $"photos/{photo}?small=true";
}
