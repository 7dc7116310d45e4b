using PatternStudio.Craft.Charting;
using PatternStudio.Publishing.Pdf;

namespace PatternStudio.Publishing;

/// <summary>Paints a drawing as PDF: the same picture as the SVG, in lines rather than dots, on A4 pages with its title and its key, letters embedded.</summary>
public static class PdfPainter
{
    /// <summary>
    /// Paints a chart. It is fitted to a page; where stitches would be too small to work from, it is shown whole on the first page and once more, larger, over as many pages
    /// as it takes, which overlap and say which page comes beside them.
    /// </summary>
    /// <param name="drawing">The chart.</param>
    /// <returns>A PDF file, tagged for screen readers.</returns>
    public static byte[] Paint(Drawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        using var pages = new ChartPages(drawing);
        return pages.Write();
    }
}
