using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Tests.Anatomy;

/// <summary>Shorthands for tests of motions.</summary>
internal static class MotionReading
{
    /// <summary>Reads words that must be understood whole.</summary>
    public static ReadMotions Whole(string words, Terminology terminology = Terminology.Us)
    {
        ReadMotions read = MotionReader.Read(words, terminology);
        Assert.Equal("", string.Join(" | ", read.Unread.Select(span => words.Substring(span.Start, span.Length))));
        return read;
    }

    /// <summary>The loops after each motion, as '2 3 1'.</summary>
    public static string Loops(string words) => string.Join(' ', StitchAnatomy.Of(Whole(words))!.Loops);
}
