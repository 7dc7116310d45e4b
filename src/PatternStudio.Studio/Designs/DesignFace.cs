namespace PatternStudio.Studio.Designs;

/// <summary>What a list needs of a design beside its numbers: its picture, and its words to search in. Made whenever the design is computed.</summary>
public sealed class DesignFace
{
    /// <summary>Longest list of sizes.</summary>
    public const int SizesLength = 200;

    private DesignFace() { }

    internal DesignFace(Guid designId) => DesignId = designId;

    public Guid DesignId { get; private set; }

    /// <summary>The pattern in capitals.</summary>
    public string Words { get; private set; } = "";

    /// <summary>The chart as small as a stamp, a PNG; null where there is nothing to draw.</summary>
    public byte[]? Picture { get; private set; }

    /// <summary>The names of its sizes: 'S, M, L'; empty where there is one only.</summary>
    public string Sizes { get; private set; } = "";

    /// <summary>Number of findings that are notes.</summary>
    public int Notes { get; private set; }

    internal void Show(string words, Results results)
    {
        string sizes = string.Join(", ", results.Sizes.Select(size => size.Name).Where(name => name.Length > 0));
        (Words, Notes) = (words, results.Findings.Count - results.Errors - results.Warnings);
        Sizes = sizes.Length <= SizesLength ? sizes : $"{results.Sizes.Count} sizes";
    }

    internal void Draw(byte[]? picture) => Picture = picture;
}
