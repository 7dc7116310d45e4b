namespace PatternStudio.Studio.Designs;

/// <summary>The text of a design as saved once. Its words are never changed and never removed.</summary>
public sealed class DesignVersion
{
    /// <summary>Longest name.</summary>
    public const int NameLength = 80;

    private DesignVersion() { }

    internal DesignVersion(Guid designId, int number, string text, Guid savedBy, DateTimeOffset savedAt) =>
        (DesignId, Number, Text, SavedBy, SavedAt) = (designId, number, text, savedBy, savedAt);

    public Guid DesignId { get; private set; }

    /// <summary>1 for the first, one more for each save.</summary>
    public int Number { get; private set; }

    public string Text { get; private set; } = "";

    /// <summary>The account that saved it.</summary>
    public Guid SavedBy { get; private set; }

    public DateTimeOffset SavedAt { get; private set; }

    /// <summary>What it is kept for: 'sent to the testers'; empty for a save like any other. The only thing that can be changed later.</summary>
    public string Name { get; private set; } = "";

    internal void Call(string name) => Name = name;
}
