namespace PatternStudio.Studio.Tags;

/// <summary>A word by which designs of a studio are kept together: 'baby', 'spring book', 'for the fair'.</summary>
public sealed class Tag
{
    /// <summary>Longest name.</summary>
    public const int NameLength = 40;

    private Tag() { }

    internal Tag(Guid id, Guid studioId, string name)
    {
        (Id, StudioId) = (id, studioId);
        Rename(name);
    }

    public Guid Id { get; private set; }

    public Guid StudioId { get; private set; }

    public string Name { get; private set; } = "";

    /// <summary>The name in capitals: one studio has no two tags that differ by case alone.</summary>
    public string NameKey { get; private set; } = "";

    internal void Rename(string name) => (Name, NameKey) = (name, KeyOf(name));

    internal static string KeyOf(string name) => name.ToUpperInvariant();
}

/// <summary>A design bears a tag.</summary>
public sealed class DesignTag
{
    private DesignTag() { }

    internal DesignTag(Guid designId, Guid tagId) => (DesignId, TagId) = (designId, tagId);

    public Guid DesignId { get; private set; }

    public Guid TagId { get; private set; }
}

/// <summary>A tag that was removed.</summary>
/// <param name="Designs">Those that bore it.</param>
public sealed record RemovedTag(string Name, IReadOnlyList<Guid> Designs);

/// <summary>A tag of the studio.</summary>
/// <param name="Designs">Number of designs that bear it, without deleted ones.</param>
public sealed record KeptTag(Guid Id, string Name, int Designs);
