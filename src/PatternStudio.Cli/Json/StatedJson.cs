using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace PatternStudio.Cli.Json;

/// <summary>A stated count: '(20 sts)' is the number 20, of '20 (30, 40) sts' each size has its own, '10 puffs, 11 sc' are the words.</summary>
[JsonConverter(typeof(Converter))]
internal sealed record StatedJson(long? Number, string Text)
{
    /// <param name="stated">The words of the row; null where it states none.</param>
    /// <param name="size">0-based size.</param>
    /// <param name="sizes">Number of sizes of the pattern.</param>
    public static StatedJson? From(string? stated, int size = 0, int sizes = 1) =>
        stated is null ? null : new StatedJson(PlainNumber(stated, size, sizes), StatedWords.Bare(stated));

    /// <summary>The one number in the words, or the size's own of a list; null where there are others, as in '4 ch-2 sps'.</summary>
    private static long? PlainNumber(string stated, int size, int sizes)
    {
        string[] numbers = stated.Split(stated.Where(c => !char.IsDigit(c)).Distinct().ToArray(), StringSplitOptions.RemoveEmptyEntries);
        string? own = numbers.Length == 1 ? numbers[0] : numbers.Length == sizes ? numbers[size] : null;
        return long.TryParse(own, NumberStyles.None, CultureInfo.InvariantCulture, out long number) ? number : null;
    }

    internal sealed class Converter : JsonConverter<StatedJson>
    {
        public override StatedJson Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.Number ? new StatedJson(reader.GetInt64(), "") : new StatedJson(null, reader.GetString() ?? "");

        public override void Write(Utf8JsonWriter writer, StatedJson value, JsonSerializerOptions options)
        {
            if (value.Number is { } number) writer.WriteNumberValue(number);
            else writer.WriteStringValue(value.Text);
        }
    }
}

/// <summary>The words of a stated count.</summary>
internal static class StatedWords
{
    /// <summary>'(20 sts)' without its brackets; '20 (30, 40) sts' as it is.</summary>
    public static string Bare(string stated)
    {
        string words = stated.Trim(' ', '.', '—', '–', '-');
        bool wrapped = words.Length > 1 && words[0] is '(' or '[' or '{' && words.IndexOfAny([')', ']', '}']) == words.Length - 1;
        return wrapped ? words[1..^1].Trim() : words;
    }
}
