using System.Buffers;
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
        ReadOnlySpan<char> looked = text.AsSpan(0, Math.Min(text.Length, Looked));
        if (looked.Contains('\0')) return false;
        int strange = 0;
        for (ReadOnlySpan<char> rest = looked; rest.IndexOfAny(Strange) is >= 0 and int at; rest = rest[(at + 1)..]) strange++;
        return strange * 20 <= looked.Length;
    }

    /// <summary>Control characters that part no words or lines, and the sign of bytes that were no writing.</summary>
    private static readonly SearchValues<char> Strange = SearchValues.Create(
        [.. Enumerable.Range(char.MinValue, char.MaxValue).Select(code => (char)code).Where(mark => (char.IsControl(mark) && mark is not ('\n' or '\r' or '\t' or '\f')) || mark == '\uFFFD')]);

    public static void Report(ReadingContext context, string text, bool isText)
    {
        if (!isText) context.Report(ReadingTroubleKind.NotText, "bytes", new TextSpan(0, Math.Min(text.Length, 1)));
        if (text.Length > ReadingLimits.Characters)
            context.Report(ReadingTroubleKind.TooLarge, "characters", TextSpan.FromTo(ReadingLimits.Characters, text.Length));
    }
}
