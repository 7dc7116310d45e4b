namespace PatternStudio.Studio.Rounds;

/// <summary>Somebody who works a pattern for the designer. She has no account: a name is all that is known of her.</summary>
public sealed class Tester
{
    /// <summary>Longest name.</summary>
    public const int NameLength = 80;

    private Tester() { }

    internal Tester(Guid id, Guid roundId, string name, int? size, DateTimeOffset now) =>
        (Id, RoundId, Name, Size, Added) = (id, roundId, name, size, now);

    public Guid Id { get; private set; }

    public Guid RoundId { get; private set; }

    public string Name { get; private set; } = "";

    /// <summary>0-based size that she was asked to work; null where she chooses.</summary>
    public int? Size { get; private set; }

    public DateTimeOffset Added { get; private set; }
}
