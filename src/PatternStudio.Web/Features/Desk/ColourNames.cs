using Microsoft.Extensions.Localization;

namespace PatternStudio.Web.Features.Desk;

/// <summary>The colours of a pattern in words.</summary>
internal static class ColourNames
{
    /// <summary>As the pattern names it; 'colour not named' where it names none.</summary>
    public static string Say(string colour, IStringLocalizer words) => colour.Length > 0 ? colour : words["ColourNotNamed"];

    /// <summary>'A, B'.</summary>
    public static string Say(IEnumerable<string> colours, IStringLocalizer words) => string.Join(", ", colours.Select(colour => Say(colour, words)));
}
