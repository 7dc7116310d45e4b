using System.Buffers;
using System.Text;

namespace PatternStudio.Studio;

/// <summary>Checks names and texts that people enter.</summary>
internal static class Wording
{
    /// <summary>A name as kept: without blanks around it.</summary>
    public static string Tidy(string? name) => name?.Trim() ?? "";

    /// <summary>What is wrong with a name that must be there.</summary>
    /// <param name="what">What it names: 'studio', 'design', 'yarn'.</param>
    public static IEnumerable<FieldMessage> NameFaults(string field, string what, string name, int most) =>
        string.IsNullOrWhiteSpace(name)
            ? [new(field, $"The {what} needs a name. Enter one.")]
            : ShortFaults(field, $"The name of the {what}", name, most);

    /// <summary>What is wrong with a short text that may be empty.</summary>
    /// <param name="subject">'The colour name'.</param>
    public static IEnumerable<FieldMessage> ShortFaults(string field, string subject, string text, int most)
    {
        if (text.Length > most)
            yield return new(field, $"{subject} has {text.Length:N0} characters. Shorten it to {most:N0} or fewer.");
        if (UnstorableAt(text) >= 0)
            yield return new(field, $"{subject} holds a character that can't be kept. Type it anew instead of pasting it.");
    }

    /// <summary>0-based offset of the first character that no store can keep: NUL, or half of a surrogate pair; -1 for none.</summary>
    public static int UnstorableAt(ReadOnlySpan<char> text)
    {
        for (int i = 0; i < text.Length;)
        {
            if (text[i] == '\0' || Rune.DecodeFromUtf16(text[i..], out _, out int length) != OperationStatus.Done) return i;
            i += length;
        }

        return -1;
    }
}
