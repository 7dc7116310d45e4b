using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace PatternStudio.Cli.Json;

/// <summary>A stated count: '(20 sts)' is the number 20, '(10 puffs, 11 sc)' are its words.</summary>
[JsonConverter(typeof(Converter))]
internal sealed record StatedJson(long? Number, string Text)
{
    public static StatedJson? From(string? stated) => stated is null ? null : new StatedJson(OnlyNumber(stated), stated);

    /// <summary>The one number in the words; null where there are none or several, or where it names a space ('4 ch-2 sps').</summary>
    private static long? OnlyNumber(string stated)
    {
        string[] numbers = stated.Split(stated.Where(c => !char.IsDigit(c)).Distinct().ToArray(), StringSplitOptions.RemoveEmptyEntries);
        return numbers.Length == 1 && long.TryParse(numbers[0], NumberStyles.None, CultureInfo.InvariantCulture, out long number) ? number : null;
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
