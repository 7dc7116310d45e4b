using System.IO.Compression;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace PatternStudio.Studio.Designs;

/// <summary>Results as they are stored: JSON, packed.</summary>
internal static class ResultsJson
{
    private static readonly JsonSerializerOptions Options = new()
    {
        IgnoreReadOnlyProperties = true,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        // It never becomes part of a page: quotes and angle brackets may stay as they are.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter() },
    };

    public static byte[] Pack(Results results)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest)) JsonSerializer.Serialize(gzip, results, Options);
        return packed.ToArray();
    }

    /// <summary>Null where the stored form is of an older make and can't be read.</summary>
    public static Results? Unpack(byte[] packed)
    {
        try
        {
            using var gzip = new GZipStream(new MemoryStream(packed), CompressionMode.Decompress);
            Results? results = JsonSerializer.Deserialize<Results>(gzip, Options);
            return results is { Findings: not null, Sizes.Count: > 0 } ? results : null;
        }
        catch (Exception exception) when (exception is JsonException or InvalidDataException)
        {
            return null;
        }
    }
}
