namespace PatternStudio.Craft.Text;

/// <summary>A place as people count it.</summary>
/// <param name="Line">1-based line.</param>
/// <param name="Column">1-based column, in UTF-16 units.</param>
public readonly record struct LinePosition(int Line, int Column);
