namespace PatternStudio.Craft.Charting;

/// <summary>Whose key decides the form of a symbol, where the published keys differ.</summary>
public enum SymbolStyle
{
    /// <summary>The Craft Yarn Council's: a single crochet is an upright cross (× or + are both accepted there), one loop only is an arc.</summary>
    Cyc,

    /// <summary>JIS L 0201: a single crochet is a slanted cross, one loop only is a bar below.</summary>
    Jis,
}
