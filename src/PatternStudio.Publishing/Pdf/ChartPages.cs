using PatternStudio.Craft.Charting;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace PatternStudio.Publishing.Pdf;

/// <summary>Sets a chart on A4 pages: title, chart, key; then the large pages where stitches are small. Lengths are points, 72 to the inch.</summary>
internal sealed class ChartPages : IDisposable
{
    private const double Millimetre = 72 / 25.4;
    private const double Short = 210 * Millimetre;
    private const double Long = 297 * Millimetre;
    private const double Margin = 15 * Millimetre;
    private const double TitleSize = 17;
    private const double TitleRoom = 30;

    /// <summary>No stitch is wider than this, and below <see cref="Smallest"/> nobody can work from it.</summary>
    private const double Widest = 6 * Millimetre;
    private const double Smallest = 2 * Millimetre;

    /// <summary>One stitch width in the key: its letters are nine tenths of that.</summary>
    private const double KeyUnit = 10;

    /// <summary>The share of a page that the key may take beside the chart.</summary>
    private const double KeyShare = 0.45;

    private readonly PdfDocument document = new();
    private readonly Drawing drawing;
    private readonly Box picture;
    private readonly UAManager reader;
    private readonly (double Width, double Height) size;
    private readonly KeyLayout key;
    private XGraphics? page;

    public ChartPages(Drawing drawing)
    {
        this.drawing = drawing;
        picture = drawing.Bounds;
        size = picture.Width > picture.Height * 1.15 ? (Long, Short) : (Short, Long);
        document.Info.Title = drawing.Title;
        reader = UAManager.ForDocument(document);
        reader.SetDocumentLanguage("en");
        key = KeyLayout.Under(drawing with { Bounds = new Box(0, 0, (size.Width - (2 * Margin)) / KeyUnit, 0) });
    }

    private double Wide => size.Width - (2 * Margin);

    private double High => size.Height - (2 * Margin) - TitleRoom;

    public byte[] Write()
    {
        Begin(drawing.Title);
        double keyHigh = key.Bounds.Height * KeyUnit;
        bool beside = keyHigh <= High * KeyShare;
        double unit = Math.Min(Widest, Math.Min(Wide / picture.Width, (beside ? High - keyHigh : High) / picture.Height));
        var area = new XRect(Margin, Margin + TitleRoom, Wide, picture.Height * unit);
        Chart(area, unit, picture, drawing.Description);
        if (!beside) Begin($"{drawing.Title}: key");
        Key(beside ? area.Bottom : Margin + TitleRoom, Math.Min(KeyUnit, KeyUnit * High / keyHigh));
        if (unit < Smallest && !drawing.IsOverview) Large();
        page!.Dispose();
        using var file = new MemoryStream();
        document.Save(file, closeStream: false);
        return file.ToArray();
    }

    public void Dispose()
    {
        page?.Dispose();
        document.Dispose();
    }

    private void Large()
    {
        var tiles = new PageTiles(picture, Wide, High);
        foreach (PageTile tile in tiles.All(document.PageCount + 1))
        {
            Begin($"{drawing.Title}: {tile.Says}");
            var area = new XRect(Margin, Margin + TitleRoom, Wide, High);
            Chart(area, tiles.Unit, tile.Area, $"{drawing.Description} This page shows a part of it: {tile.Says}.");
            reader.StructureBuilder.BeginArtifact();
            tile.MarkOverlaps(page!, area, PageTiles.Overlap * tiles.Unit);
            reader.StructureBuilder.End();
        }
    }

    private void Begin(string title)
    {
        PdfPage next = document.AddPage();
        (next.Width, next.Height) = (XUnit.FromPoint(size.Width), XUnit.FromPoint(size.Height));
        // The new page must be there before the old one is let go.
        XGraphics before = page!;
        page = XGraphics.FromPdfPage(next);
        before?.Dispose();
        reader.StructureBuilder.BeginElement(PdfBlockLevelElementTag.Heading1);
        page.DrawString(title, FittedFont(title), XBrushes.Black, Margin, Margin + TitleSize);
        reader.StructureBuilder.End();
    }

    private XFont FittedFont(string title)
    {
        double wide = page!.MeasureString(title, PdfFonts.Of(TitleSize)).Width;
        return PdfFonts.Of(wide <= Wide ? TitleSize : Math.Max(6, TitleSize * Wide / wide));
    }

    private void Chart(XRect area, double unit, Box part, string words)
    {
        reader.StructureBuilder.BeginElement(PdfIllustrationElementTag.Figure, words, area);
        XGraphicsState state = page!.Save();
        page.IntersectClip(area);
        page.TranslateTransform(area.Left + ((area.Width - (Math.Min(part.Width, area.Width / unit) * unit)) / 2), area.Top);
        page.ScaleTransform(unit);
        page.TranslateTransform(-part.Left, -part.Top);
        var brush = new PdfBrush(page);
        foreach (DrawnRow row in drawing.Rows)
        {
            brush.Take(PngStyle.Of(row.Tone));
            foreach (Shape shape in row.Symbols.SelectMany(symbol => symbol.Shapes).Concat(row.Marks))
                if (Meet(shape.Bounds, part)) brush.Paint(shape);
        }
        page.Restore(state);
        reader.StructureBuilder.End();
    }

    private static bool Meet(Box one, Box other) => one.Right >= other.Left && one.Left <= other.Right && one.Bottom >= other.Top && one.Top <= other.Bottom;

    /// <summary>The words of the key are read aloud; its symbols are there for the eye.</summary>
    private void Key(double top, double unit)
    {
        XGraphicsState state = page!.Save();
        page.TranslateTransform(Margin, top);
        page.ScaleTransform(unit);
        var brush = new PdfBrush(page);
        brush.Take(PngStyle.Key);
        Paint(brush, key.Symbols);
        foreach ((RowTone tone, var shapes) in key.Tones)
        {
            brush.Take(PngStyle.Of(tone));
            Paint(brush, shapes);
        }
        page.Restore(state);
    }

    private void Paint(PdfBrush brush, IEnumerable<Shape> shapes)
    {
        foreach (Shape shape in shapes)
        {
            if (shape is Words { Text.Length: > 1 }) reader.StructureBuilder.BeginElement(PdfBlockLevelElementTag.Paragraph);
            else reader.StructureBuilder.BeginArtifact();
            brush.Paint(shape);
            reader.StructureBuilder.End();
        }
    }
}
