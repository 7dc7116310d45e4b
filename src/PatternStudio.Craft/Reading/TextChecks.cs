using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading;

/// <summary>Checks that a text is writing, and not too long.</summary>
internal static class TextChecks
{
    private const int Looked = 100_000;

    /// <summary>False where the text holds bytes that no writing has: zeros, or many control and replacement characters.</summary>
    public static bool IsText(string text)
    {
        int strange = 0;
        int length = Math.Min(text.Length, Looked);
        for (int i = 0; i < length; i++)
        {
            if (text[i] == '\0') return false;
            if ((char.IsControl(text[i]) && text[i] is not ('\n' or '\r' or '\t' or '\f')) || text[i] == '\uFFFD') strange++;
        }
        return strange * 20 <= length;
    }

    public static void Report(ReadingContext context, string text, bool isText)
    {
        if (!isText) context.Report(ReadingTroubleKind.NotText, "bytes", new TextSpan(0, Math.Min(text.Length, 1)));
        if (text.Length > ReadingLimits.Characters)
            context.Report(ReadingTroubleKind.TooLarge, "characters", TextSpan.FromTo(ReadingLimits.Characters, text.Length));
    }
}
