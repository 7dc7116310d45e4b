using PatternStudio.Craft.Charting;
using PdfSharp.Drawing;

namespace PatternStudio.Publishing.Pdf;

/// <summary>Parts a chart into pages that overlap, so that they can be laid or glued together.</summary>
/// <param name="picture">The whole chart, in stitch widths.</param>
/// <param name="wide">Room on a page, in points.</param>
/// <param name="high">Room on a page, in points.</param>
internal sealed class PageTiles(Box picture, double wide, double high)
{
    /// <summary>Nobody lays out more pages than this: the stitches are made smaller instead.</summary>
    private const int Most = 60;
    private const double Comfortable = 3.2 * 72 / 25.4;

    /// <summary>How much neighbours share, in stitch widths.</summary>
    public const double Overlap = 2;

    /// <summary>Points of one stitch width.</summary>
    public double Unit { get; } = Fitting(picture, wide, high);

    private int Columns => Count(picture.Width, wide / Unit);

    private int Rows => Count(picture.Height, high / Unit);

    /// <summary>Every page, line by line from the top left.</summary>
    /// <param name="firstPage">The number of the first of them in the document.</param>
    public IEnumerable<PageTile> All(int firstPage)
    {
        (double width, double height) = (wide / Unit, high / Unit);
        for (int row = 0; row < Rows; row++)
            for (int column = 0; column < Columns; column++)
            {
                double left = picture.Left + (column * (width - Overlap)), top = picture.Top + (row * (height - Overlap));
                int number = firstPage + (row * Columns) + column;
                yield return new PageTile(new Box(left, top, left + width, top + height), $"part {column + 1} of {Columns} from the left, {row + 1} of {Rows} from the top")
                {
                    LeftPage = column > 0 ? number - 1 : null,
                    RightPage = column < Columns - 1 ? number + 1 : null,
                    UpperPage = row > 0 ? number - Columns : null,
                    LowerPage = row < Rows - 1 ? number + Columns : null,
                };
            }
    }

    private static double Fitting(Box picture, double wide, double high)
    {
        double unit = Comfortable;
        while (Count(picture.Width, wide / unit) * Count(picture.Height, high / unit) > Most) unit *= 0.9;
        return unit;
    }

    private static int Count(double length, double room) => Math.Max(1, (int)Math.Ceiling((length - Overlap) / (room - Overlap)));
}

/// <summary>One page of a chart over several.</summary>
/// <param name="Area">What it shows, in stitch widths.</param>
/// <param name="Says">'part 1 of 2 from the left, 1 of 3 from the top'.</param>
internal sealed record PageTile(Box Area, string Says)
{
    private static readonly XPen Pen = new(XColors.Gray, 0.5) { DashStyle = XDashStyle.Dash };

    /// <summary>The page that lies on this side; null at an edge of the chart.</summary>
    public int? LeftPage { get; init; }

    public int? RightPage { get; init; }

    public int? UpperPage { get; init; }

    public int? LowerPage { get; init; }

    /// <summary>A dashed line where the neighbour begins, and its page beside it.</summary>
    /// <param name="by">How wide the overlap is, in points.</param>
    public void MarkOverlaps(XGraphics page, XRect area, double by)
    {
        XFont font = PdfFonts.Of(7);
        if (LeftPage is { } left) Mark(new XPoint(area.Left + by, area.Top), new XPoint(area.Left + by, area.Bottom), $"page {left}", new XPoint(area.Left, area.Top - 3));
        if (RightPage is { } right) Mark(new XPoint(area.Right - by, area.Top), new XPoint(area.Right - by, area.Bottom), $"page {right}", new XPoint(area.Right - 26, area.Top - 3));
        if (UpperPage is { } upper) Mark(new XPoint(area.Left, area.Top + by), new XPoint(area.Right, area.Top + by), $"page {upper}", new XPoint(area.Left + (area.Width / 2), area.Top - 3));
        if (LowerPage is { } lower) Mark(new XPoint(area.Left, area.Bottom - by), new XPoint(area.Right, area.Bottom - by), $"page {lower}", new XPoint(area.Left + (area.Width / 2), area.Bottom + 8));

        void Mark(XPoint from, XPoint to, string words, XPoint at)
        {
            page.DrawLine(Pen, from, to);
            page.DrawString(words, font, XBrushes.Gray, at);
        }
    }
}
