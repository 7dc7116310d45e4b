using PatternStudio.Craft.Charting;

namespace PatternStudio.Publishing;

/// <summary>The look of charts: tones differ in colour and in line weight, so that they differ in black and white print too.</summary>
internal static class SvgStyle
{
    /// <summary>
    /// Colours have a contrast of at least 4.5 : 1 on white. Plain colours, no variables: drawing programs and printers read them too. A page overrides them by its own
    /// rules for <c>.chart .tone-first</c> and the like.
    /// </summary>
    public const string Sheet =
        ".chart{font-family:system-ui,sans-serif;fill:none;stroke-linecap:round;stroke-linejoin:round}"
        + ".chart text{stroke:#fff;stroke-width:3;paint-order:stroke;fill:currentColor}"
        + ".chart .dot{fill:currentColor}"
        + ".chart .block{fill:currentColor;fill-opacity:.4;stroke:none}"
        + ".chart g{stroke:currentColor}"
        + ".tone-first{color:#1b3a57;stroke-width:1.3}"
        + ".tone-second{color:#a8442a;stroke-width:.8}"
        + ".tone-foundation{color:#4a4a4a;stroke-width:1}"
        + ".tone-gap{color:#6b5900;stroke-width:1;stroke-dasharray:4 3}"
        + ".key{color:#222;stroke-width:1}";

    public static string ClassOf(RowTone tone) => "tone-" + NameOf(tone);

    public static string NameOf(RowTone tone) => tone.ToString().ToLowerInvariant();
}
