using System.Text.Json;
using System.Text.Json.Serialization;

namespace PatternStudio.Studio.Designs;

/// <summary>Results as they are stored.</summary>
internal static class ResultsJson
{
    private static readonly JsonSerializerOptions Options = new()
    {
        IgnoreReadOnlyProperties = true,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Converters = { new JsonStringEnumConverter() },
    };

    public static string Write(Results results) => JsonSerializer.Serialize(results, Options);

    /// <summary>Null where the stored form is of an older make and can't be read.</summary>
    public static Results? Read(string json)
    {
        try
        {
            Results? results = JsonSerializer.Deserialize<Results>(json, Options);
            return results is { Findings: not null, Sizes.Count: > 0 } ? results : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
