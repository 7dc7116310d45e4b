namespace PatternStudio.Studio.Materials;

/// <summary>A photo that was read, turned upright, scaled down and written anew without what the camera had added. Only <see cref="PhotoReader"/> makes one.</summary>
public sealed record PreparedPhoto
{
    /// <summary>Pixels of the longer side of the kept picture: enough to count stitches on a screen.</summary>
    public const int LongestSide = 1_600;

    /// <summary>Pixels of the longer side of the small one: sharp on a card of the shelf, on a screen of two pixels to one as well.</summary>
    public const int SmallSide = 640;

    internal PreparedPhoto(byte[] picture, byte[] small) => (Picture, Small) = (picture, small);

    /// <summary>A JPEG.</summary>
    public byte[] Picture { get; }

    /// <summary>A JPEG for lists.</summary>
    public byte[] Small { get; }
}

/// <summary>What becomes of a swatch's photo.</summary>
/// <param name="With">The new one; null to have none.</param>
public sealed record PhotoChange(PreparedPhoto? With);
