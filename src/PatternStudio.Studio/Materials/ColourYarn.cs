namespace PatternStudio.Studio.Materials;

/// <summary>The yarn that one colour of a design's pattern is worked in.</summary>
public sealed class ColourYarn
{
    /// <summary>Longest name of a colour in a pattern.</summary>
    public const int ColourLength = 100;

    private ColourYarn() { }

    internal ColourYarn(Guid designId, string colour, Guid yarnId) => (DesignId, Colour, YarnId) = (designId, colour, yarnId);

    public Guid DesignId { get; private set; }

    /// <summary>As the pattern names it: 'A', 'cream'.</summary>
    public string Colour { get; private set; } = "";

    public Guid YarnId { get; private set; }

    internal void WorkIn(Guid yarnId) => YarnId = yarnId;
}
