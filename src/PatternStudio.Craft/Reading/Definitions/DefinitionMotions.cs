using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Definitions;

/// <summary>The seam to anatomy: how defining words are read motion by motion.</summary>
internal static class DefinitionMotions
{
    /// <summary>The motions of a definition's body; null where it tells none.</summary>
    public static ReadMotions? Read(ReadingContext context, TextSpan body)
    {
        ReadMotions read = MotionReader.Read(context.Source, body, context.Terminology);
        return read.Motions.IsEmpty ? null : read;
    }
}
