using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Exchange;

/// <summary>How a studio lies in an archive: docs/archive.md describes it for people.</summary>
internal static class ArchiveLayout
{
    /// <summary>Goes up when an older program could not read a newer archive any more.</summary>
    public const int Number = 1;

    public const string Format = "pattern-studio-archive";
    public const string Head = "archive.json";
    public const string Yarns = "yarns.json";
    public const string YarnTable = "yarns.csv";
    public const string Design = "design.json";
    public const string Pattern = "pattern.txt";
    public const string Rows = "rows.csv";

    public static readonly JsonSerializerOptions Json = new()
    {
        WriteIndented = true,
        IgnoreReadOnlyProperties = true,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        // It never becomes part of a page: quotes and angle brackets may stay as they are.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter() },
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Skip,
    };

    public static string PhotoFile(Guid id) => $"photos/{id:N}.jpg";

    public static string VersionFile(string folder, int number) => $"{folder}versions/{number:0000}.txt";

    /// <summary>'designs/0007-wrack-line-cloth/': numbered, since two designs may have one title; letters and digits alone, for every system.</summary>
    public static string FolderOf(int number, string title)
    {
        string plain = string.Join('-', string.Concat(title.Select(sign => char.IsAsciiLetterOrDigit(sign) ? char.ToLowerInvariant(sign) : ' '))
            .Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return $"designs/{number:0000}{(plain.Length > 0 ? "-" : "")}{(plain.Length <= 50 ? plain : plain[..50].TrimEnd('-'))}/";
    }
}

/// <summary>The head of an archive.</summary>
internal sealed record ArchiveHead(string Format, int Layout, string Studio, DateTimeOffset Written, int Designs);

/// <summary>A design in an archive. Ids hold within the archive only.</summary>
internal sealed record ArchivedDesign(
    string Title,
    DesignState State,
    DateTimeOffset Created,
    DateTimeOffset Updated,
    DateTimeOffset? Deleted,
    IReadOnlyList<string> Tags,
    Guid? Yarn,
    Guid? Gauge,
    IReadOnlyList<ArchivedVersion> Versions,
    IReadOnlyList<ArchivedSwatch> Swatches,
    IReadOnlyList<ArchivedReservation> Reserved)
{
    /// <summary>Its photos, in the order in which they were added; null in archives from before designs had any.</summary>
    public IReadOnlyList<ArchivedPhoto>? Photos { get; init; }

    /// <summary>The photo on its card; null for the small chart.</summary>
    public Guid? OnCard { get; init; }

    /// <summary>The yarns of its colours; null in archives from before there were any.</summary>
    public IReadOnlyList<ArchivedColour>? Colours { get; init; }
}

/// <summary>The yarn of a colour.</summary>
/// <param name="Colour">As the pattern names it.</param>
internal sealed record ArchivedColour(string Colour, Guid Yarn);

/// <summary>A version; its text is in a file of its own.</summary>
/// <param name="SavedBy">The e-mail address of the account; empty where it was gone.</param>
internal sealed record ArchivedVersion(int Number, DateTimeOffset SavedAt, string SavedBy, ComputedSummary Computed);

internal sealed record ArchivedSwatch(Guid Id, SwatchDetails Details, Guid? Photo);

internal sealed record ArchivedPhoto(Guid Id, string Caption);

internal sealed record ArchivedReservation(Guid Lot, double Grams);

internal sealed record ArchivedYarns(IReadOnlyList<ArchivedYarn> Yarns, IReadOnlyList<ArchivedLot> Lots);

internal sealed record ArchivedYarn(Guid Id, YarnDetails Details);

internal sealed record ArchivedLot(Guid Id, LotDetails Details);
