namespace PatternStudio.Studio.Designs;

/// <summary>A design: its written pattern, and the swatch and yarn that its numbers come from.</summary>
public sealed class Design
{
    /// <summary>Longest title.</summary>
    public const int TitleLength = 200;

    private Design() { }

    internal Design(Guid id, Guid studioId, string title, DateTimeOffset now)
    {
        (Id, StudioId, Created) = (id, studioId, now);
        Rename(title, now);
    }

    public Guid Id { get; private set; }

    public Guid StudioId { get; private set; }

    public string Title { get; private set; } = "";

    /// <summary>The title in capitals, to search and sort by.</summary>
    public string TitleKey { get; private set; } = "";

    public DesignState State { get; private set; } = DesignState.Idea;

    /// <summary>The pattern as last saved; the same as the text of version <see cref="LatestVersion"/>.</summary>
    public string Text { get; private set; } = "";

    /// <summary>Number of the version saved last; 1 for the one a design begins with.</summary>
    public int LatestVersion { get; private set; }

    /// <summary>Goes up with every change, so that of two changes at the same time one is noticed and done again.</summary>
    public int RowVersion { get; private set; }

    /// <summary>The swatch that calibrates size and yarn; null for none.</summary>
    public Guid? SwatchId { get; private set; }

    /// <summary>The yarn it is made of; null for none.</summary>
    public Guid? YarnId { get; private set; }

    /// <summary>The photo on its card; null where the card shows its small chart.</summary>
    public Guid? PhotoId { get; private set; }

    public DateTimeOffset Created { get; private set; }

    public DateTimeOffset Updated { get; private set; }

    /// <summary>When it was deleted; null while it is there. Nothing of it is lost.</summary>
    public DateTimeOffset? Deleted { get; private set; }

    internal void Rename(string title, DateTimeOffset now)
    {
        Title = title;
        TitleKey = KeyOf(title);
        Touch(now);
    }

    internal void MoveTo(DesignState state, DateTimeOffset now)
    {
        State = state;
        Touch(now);
    }

    /// <summary>Takes a new text and gives the version that keeps it.</summary>
    internal DesignVersion Save(string text, Guid accountId, DateTimeOffset now)
    {
        Text = text;
        LatestVersion++;
        Touch(now);
        return new DesignVersion(Id, LatestVersion, text, accountId, now);
    }

    internal void MeasureBy(Guid? swatchId, DateTimeOffset now)
    {
        SwatchId = swatchId;
        Touch(now);
    }

    internal void MakeOf(Guid? yarnId, DateTimeOffset now)
    {
        YarnId = yarnId;
        Touch(now);
    }

    internal void Show(Guid? photoId, DateTimeOffset now)
    {
        PhotoId = photoId;
        Touch(now);
    }

    internal void Delete(DateTimeOffset now)
    {
        Deleted = now;
        Touch(now);
    }

    internal void Restore(DateTimeOffset now)
    {
        Deleted = null;
        Touch(now);
    }

    /// <summary>Stands again as it stood where it was taken out: brought in from an archive.</summary>
    internal void StandAs(DesignState state, DateTimeOffset created, DateTimeOffset updated, DateTimeOffset? deleted)
    {
        (State, Created, Updated, Deleted) = (state, created, updated, deleted);
        RowVersion++;
    }

    /// <summary>A line as a title: cut where it is too long, and never within a character.</summary>
    public static string TitleOf(string line) =>
        line.Length <= TitleLength ? line : line[..(TitleLength - (char.IsHighSurrogate(line[TitleLength - 1]) ? 1 : 0))];

    internal static string KeyOf(string title) => title.ToUpperInvariant();

    private void Touch(DateTimeOffset now)
    {
        Updated = now;
        RowVersion++;
    }
}
