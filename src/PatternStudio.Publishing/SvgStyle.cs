using PatternStudio.Craft.Charting;

namespace PatternStudio.Publishing;

/// <summary>The look of charts: tones differ in colour and in line weight, so that they differ in black and white print too.</summary>
internal static class SvgStyle
{
    /// <summary>
    /// Colours have a contrast of at least 4.5 : 1 on white. A page that sets <c>--chart-first</c> and the like, or a dark scheme, overrides them.
    /// </summary>
    public const string Sheet =
        ".chart{font-family:system-ui,sans-serif;fill:none;stroke-linecap:round;stroke-linejoin:round}"
        + ".chart text{stroke:none;fill:currentColor}"
        + ".chart .dot{fill:currentColor}"
        + ".chart .block{fill:currentColor;stroke:none}"
        + ".chart g{stroke:currentColor}"
        + ".tone-first{color:var(--chart-first,#1b3a57);stroke-width:1.3}"
        + ".tone-second{color:var(--chart-second,#a8442a);stroke-width:.8}"
        + ".tone-foundation{color:var(--chart-foundation,#4a4a4a);stroke-width:1}"
        + ".tone-gap{color:var(--chart-gap,#6b5900);stroke-width:1;stroke-dasharray:4 3}"
        + ".key{color:var(--chart-key,#222);stroke-width:1}";

    public static string ClassOf(RowTone tone) => "tone-" + tone.ToString().ToLowerInvariant();
}
