namespace PatternStudio.Studio;

/// <summary>A studio: the room in which one designer or a few work on the same designs and yarns.</summary>
public sealed class Studio
{
    /// <summary>Longest name.</summary>
    public const int NameLength = 200;

    private Studio() { }

    /// <summary>Opens a studio.</summary>
    internal Studio(Guid id, string name, DateTimeOffset created) => (Id, Name, Created) = (id, name, created);

    public Guid Id { get; private set; }

    public string Name { get; private set; } = "";

    public DateTimeOffset Created { get; private set; }
}
