using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace PatternStudio.Cli.Json;

/// <summary>The JSON shapes of every command, written without reflection.</summary>
[JsonSerializable(typeof(CheckJson))]
[JsonSerializable(typeof(ScheduleJson))]
internal sealed partial class CliJson : JsonSerializerContext
{
    /// <summary>'½' and quotation marks stay readable; nothing here goes into a web page.</summary>
    public static CliJson Readable { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });
}
