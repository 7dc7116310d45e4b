using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Definitions;

/// <summary>The seam to anatomy: how defining words are read motion by motion.</summary>
internal static class DefinitionMotions
{
    /// <summary>The motions of a definition's body; null where they are not read.</summary>
    public static ReadMotions? Read(SourceText source, TextSpan body)
    {
        ArgumentNullException.ThrowIfNull(source);
        return body.Length < 0 ? new ReadMotions([], []) : null;
    }
}
