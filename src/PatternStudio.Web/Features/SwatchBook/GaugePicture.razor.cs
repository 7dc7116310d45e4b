using System.Globalization;
using Microsoft.AspNetCore.Components;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>Ten by ten centimetres of a fabric in its yarn's colour: a line for every stitch and every row.</summary>
public sealed partial class GaugePicture
{
    private const double Side = 10;

    [Parameter, EditorRequired]
    public SwatchDetails Swatch { get; set; } = null!;

    /// <summary>'#6A8F9C'; empty where not known.</summary>
    [Parameter]
    public string Colour { get; set; } = "";

    private string Stitches => Lines(Swatch.Stitches / Swatch.WidthCm, at => $"M{at} 0V100");

    private string Rows => Lines(Swatch.Rows / Swatch.HeightCm, at => $"M0 {at}H100");

    private string Ink => Colour.Length == 0 ? "var(--ink-soft)" : IsLight ? "#202b33" : "#fcfbf7";

    /// <summary>Relative luminance by the usual weights of red, green and blue (ITU-R BT.709).</summary>
    private bool IsLight => (0.2126 * Part(1)) + (0.7152 * Part(3)) + (0.0722 * Part(5)) > 120;

    private int Part(int at) => int.TryParse(Colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture, out int part) ? part : 0;

    /// <summary>At most a hundred: finer fabric is a plain colour at this size.</summary>
    private static string Lines(double perCentimetre, Func<string, string> line)
    {
        int count = (int)Math.Floor(perCentimetre * Side);
        return count > 100
            ? ""
            : string.Concat(Enumerable.Range(1, count).Select(number =>
                line((number / perCentimetre / Side * 100).ToString("0.#", CultureInfo.InvariantCulture))));
    }
}
