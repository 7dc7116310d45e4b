namespace PatternStudio.Studio.Designs;

/// <summary>A photo of the finished piece, or of one on the way there.</summary>
public sealed class DesignPhoto
{
    /// <summary>Longest caption.</summary>
    public const int CaptionLength = 200;

    /// <summary>Most photos of a design: enough to show every side and every size.</summary>
    public const int Most = 24;

    private DesignPhoto() { }

    internal DesignPhoto(Guid designId, Guid photoId, int place, string caption) =>
        (DesignId, PhotoId, Place, Caption) = (designId, photoId, place, caption);

    public Guid DesignId { get; private set; }

    public Guid PhotoId { get; private set; }

    /// <summary>Photos stand in the order in which they were added: this goes up.</summary>
    public int Place { get; private set; }

    /// <summary>What is to be seen, for those who do not see it: 'the cloth on a line, blocked'; may be empty.</summary>
    public string Caption { get; private set; } = "";

    internal void Say(string caption) => Caption = caption;
}

/// <summary>A photo of a design as the desk shows it.</summary>
/// <param name="Id">Of the picture itself.</param>
/// <param name="OnCard">True for the one that the shelf shows.</param>
public sealed record KeptDesignPhoto(Guid Id, string Caption, bool OnCard);
