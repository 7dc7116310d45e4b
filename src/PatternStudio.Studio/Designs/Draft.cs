namespace PatternStudio.Studio.Designs;

/// <summary>
/// Words of a design that a member has typed and not saved, as one open desk last had them. Kept apart for each desk, so that two windows
/// never write over each other.
/// </summary>
public sealed class Draft
{
    /// <summary>Longest description of a place.</summary>
    public const int PlaceLength = 40;

    private Draft() { }

    internal Draft(Guid designId, Guid accountId, DraftWords words)
    {
        (DesignId, AccountId, Writer) = (designId, accountId, words.Writer);
        Take(words);
    }

    public Guid DesignId { get; private set; }

    /// <summary>The member who typed it.</summary>
    public Guid AccountId { get; private set; }

    /// <summary>The open desk that it was typed at: a new one each time a design is opened.</summary>
    public Guid Writer { get; private set; }

    public string Text { get; private set; } = "";

    /// <summary>The version that was saved when the words were typed.</summary>
    public int BasedOn { get; private set; }

    public DateTimeOffset At { get; private set; }

    /// <summary>What it was typed on: 'a phone', 'a computer'.</summary>
    public string Place { get; private set; } = "";

    internal void Take(DraftWords words) =>
        (Text, BasedOn, At, Place) = (words.Text, words.BasedOn, words.At, words.Place.Length <= PlaceLength ? words.Place : words.Place[..PlaceLength]);
}

/// <summary>Words that are not saved yet.</summary>
/// <param name="Writer">The open desk that they were typed at.</param>
/// <param name="Text">At most 2 million characters.</param>
/// <param name="BasedOn">The version that the writer had before them.</param>
/// <param name="At">When they were last changed.</param>
/// <param name="Place">What they were typed on: 'a phone', 'a computer'. Cut after <see cref="Draft.PlaceLength"/> characters.</param>
public sealed record DraftWords(Guid Writer, string Text, int BasedOn, DateTimeOffset At, string Place)
{
    /// <summary>True where this is the same draft, unchanged since.</summary>
    public bool IsSameAs(DraftWords other) => Writer == other.Writer && At == other.At;
}
