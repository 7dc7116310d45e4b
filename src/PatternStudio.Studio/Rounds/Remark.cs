namespace PatternStudio.Studio.Rounds;

/// <summary>How the designer answered a remark.</summary>
public enum AnswerKind
{
    None,

    /// <summary>'Mended in version 3'.</summary>
    Mended,

    /// <summary>'As intended'.</summary>
    AsIntended,

    /// <summary>In her own words alone.</summary>
    Words,
}

/// <summary>Something that a tester says at a row or a word of the pattern.</summary>
public sealed class Remark
{
    /// <summary>Longest remark and answer.</summary>
    public const int TextLength = 2_000;

    /// <summary>Longest name of a row, and longest word that is pointed at.</summary>
    public const int PlaceLength = 120;

    private Remark() { }

    internal Remark(Guid id, Guid reportId, RemarkDetails details, Guid? photoId, DateTimeOffset now)
    {
        (Id, ReportId, PhotoId, Sent) = (id, reportId, photoId, now);
        (Row, Word, Text) = (details.Row, details.Word, details.Text);
    }

    public Guid Id { get; private set; }

    public Guid ReportId { get; private set; }

    /// <summary>'Row 3', 'Border, Rnd 2'; empty for the pattern as a whole.</summary>
    public string Row { get; private set; } = "";

    /// <summary>The word meant, as it stands there; empty for the whole row.</summary>
    public string Word { get; private set; } = "";

    public string Text { get; private set; } = "";

    public Guid? PhotoId { get; private set; }

    public DateTimeOffset Sent { get; private set; }

    public AnswerKind Answered { get; private set; }

    /// <summary>The version in which it is mended; null for other answers.</summary>
    public int? MendedIn { get; private set; }

    public string Answer { get; private set; } = "";

    internal void Reply(RemarkAnswer answer) =>
        (Answered, MendedIn, Answer) = (answer.Kind, answer.Kind == AnswerKind.Mended ? answer.MendedIn : null, answer.Words);
}

/// <summary>A remark as sent.</summary>
/// <param name="Row">At most <see cref="Remark.PlaceLength"/> characters; empty for the whole pattern.</param>
/// <param name="Word">Likewise; empty for the whole row.</param>
/// <param name="Text">1 to <see cref="Remark.TextLength"/> characters.</param>
public sealed record RemarkDetails(string Row, string Word, string Text);

/// <summary>What the designer says to a remark.</summary>
/// <param name="MendedIn">A version of the design, for <see cref="AnswerKind.Mended"/>.</param>
/// <param name="Words">At most <see cref="Remark.TextLength"/> characters; needed for <see cref="AnswerKind.Words"/>.</param>
public sealed record RemarkAnswer(AnswerKind Kind, int? MendedIn, string Words);
