using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Text;

namespace PatternStudio.Studio.Designs;

/// <summary>Why an operation on designs is refused, in sentences.</summary>
internal static class Refusals
{
    public static readonly FieldMessage NoDesign =
        new("", "This design is not in your studio, or it was deleted. Go back to the list of designs.");

    public static readonly FieldMessage NoMember =
        new("", "You are not a member of this studio. Sign in with an account that is.");

    /// <summary>What is wrong with a pattern's text; empty where it can be kept.</summary>
    public static IReadOnlyList<FieldMessage> OfText(string text)
    {
        if (text.Length > ReadingLimits.Characters)
            return [new("text", $"The pattern has {text.Length:N0} characters; {ReadingLimits.Characters:N0} can be kept. Divide it into several designs.")];
        int offset = Wording.UnstorableAt(text);
        if (offset < 0) return [];
        LinePosition place = new SourceText(text).Locate(offset);
        return [new("text", $"Line {place.Line} holds a character that can't be kept, at column {place.Column}. Delete it and type it anew.")];
    }
}
