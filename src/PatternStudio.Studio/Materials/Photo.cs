namespace PatternStudio.Studio.Materials;

/// <summary>A picture as the studio keeps it: drawn anew from what was sent, so that nothing hides in it. It never changes; another picture is another photo.</summary>
public sealed class Photo
{
    private Photo() { }

    internal Photo(Guid id, Guid studioId, PreparedPhoto prepared, DateTimeOffset now)
    {
        (Id, StudioId, Added) = (id, studioId, now);
        (Picture, Small) = (prepared.Picture, prepared.Small);
    }

    public Guid Id { get; private set; }

    public Guid StudioId { get; private set; }

    /// <summary>A JPEG, at most <see cref="PreparedPhoto.LongestSide"/> pixels either way.</summary>
    public byte[] Picture { get; private set; } = [];

    /// <summary>The same for lists.</summary>
    public byte[] Small { get; private set; } = [];

    public DateTimeOffset Added { get; private set; }

    /// <summary>As it was when it was kept, so that it can be kept again.</summary>
    internal PreparedPhoto Prepared => new(Picture, Small);
}
