namespace PatternStudio.Studio.Designs;

/// <summary>The text of a design as saved once. Never changed, never removed.</summary>
public sealed class DesignVersion
{
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
}
