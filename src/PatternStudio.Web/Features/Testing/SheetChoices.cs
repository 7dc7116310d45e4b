using System.Globalization;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Web.Features.Testing;

/// <summary>How a tester wants to read: carried in the address, so that it works with scripts off and is kept nowhere.</summary>
/// <param name="Size">0-based size; null for the one she was asked for, or the first.</param>
/// <param name="Terms">Null for the pattern's own.</param>
/// <param name="Large">Larger letters.</param>
/// <param name="Dark">Light on dark, or dark on light; null for what the device likes.</param>
public sealed record SheetChoices(int? Size, Terminology? Terms, bool Large, bool? Dark)
{
    /// <summary>The version that she says she began with; null for what is known of her link.</summary>
    public int? From { get; init; }

    public static SheetChoices Read(IQueryCollection query) => new(
        int.TryParse(query["size"], NumberStyles.None, CultureInfo.InvariantCulture, out int size) && size < 100 ? size : null,
        query["terms"].ToString() switch { "us" => Terminology.Us, "uk" => Terminology.Uk, _ => null },
        query["letters"] == "large",
        query["look"].ToString() switch { "dark" => true, "light" => false, _ => null })
    {
        From = int.TryParse(query["from"], NumberStyles.None, CultureInfo.InvariantCulture, out int version) ? version : null,
    };

    /// <summary>'?size=1&amp;look=dark'; empty where nothing was chosen.</summary>
    public string Query => string.Concat(Parts.Select((part, at) => (at == 0 ? "?" : "&") + part));

    private IEnumerable<string> Parts
    {
        get
        {
            if (From is { } version) yield return $"from={version}";
            if (Size is { } size) yield return $"size={size}";
            if (Terms is { } terms) yield return $"terms={(terms == Terminology.Uk ? "uk" : "us")}";
            if (Large) yield return "letters=large";
            if (Dark is { } dark) yield return dark ? "look=dark" : "look=light";
        }
    }
}
