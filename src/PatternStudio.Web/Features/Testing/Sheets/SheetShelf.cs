using System.Globalization;
using Microsoft.Extensions.Caching.Memory;
using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Writing;
using PatternStudio.Publishing;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Rounds;
using PatternStudio.Web.Features.Testing.Reporting;

namespace PatternStudio.Web.Features.Testing.Sheets;

/// <summary>
/// Patterns as testers read them, kept in memory: a version never changes, and a round's testers all open the same few. Entries are found by the text itself, so that nothing is
/// ever shown of a version that is no longer the round's.
/// </summary>
internal sealed class SheetShelf : IDisposable
{
    /// <summary>Charts with more symbols are grey at the width of a page: rows are drawn as blocks then.</summary>
    private static readonly ChartStyle Style = new() { MostCells = 6_000 };

    /// <summary>Letters of text, checked patterns and charts: some tens of megabytes.</summary>
    private readonly MemoryCache kept = new(new MemoryCacheOptions { SizeLimit = 200 });

    /// <summary>The pattern in some terms; null for its own.</summary>
    public CheckedPattern Pattern(string text, Terminology? terms) => Once(("pattern", text, terms, 0), () =>
    {
        if (terms is null) return PatternCheck.Check(text);
        CheckedPattern own = Pattern(text, null);
        return own.Pattern.Terms.Terminology == terms ? own : PatternCheck.Check(TermsConverter.Convert(own.Pattern, terms.Value), terms);
    });

    public Sheet Sheet(string text, Terminology? terms, int size) => Once(("sheet", text, terms, size), () => SheetReader.Read(Pattern(text, terms), size));

    /// <summary>The chart as SVG.</summary>
    public string Chart(string text, Terminology? terms, int size) => Once(("chart", text, terms, size), () =>
    {
        CheckedPattern pattern = Pattern(text, terms);
        return SvgPainter.Paint(PatternStudio.Craft.Charting.Chart.Draw(pattern, Math.Clamp(size, 0, pattern.Sizes.Count - 1), Style));
    });

    /// <summary>The cautions that the words of a title and a text call for.</summary>
    public IReadOnlyList<CautionKind> Cautions(string title, string text) =>
        Once(("cautions", $"{title}\n{text}", null, 0), () => PatternStudio.Studio.Designs.Cautions.For(title, text));

    /// <summary>What a tester's gauge makes of her size; null where it can't be told.</summary>
    public GaugeTelling? Telling(string text, ReportDetails report)
    {
        if (report is not { Stitches: { } stitches, OverCm: { } over } || report.Size >= Pattern(text, null).Sizes.Count) return null;
        string counts = string.Create(CultureInfo.InvariantCulture, $"{stitches} {report.Rows} {over}");
        PieceSchedule? mine = Once(($"piece {counts}", text, null, report.Size), () => GaugeTelling.Piece(Pattern(text, null), GaugeTelling.Counted(stitches, report.Rows, over), report.Size));
        PieceSchedule? printed = Once(("piece as printed", text, null, report.Size), () => GaugeTelling.Piece(Pattern(text, null), StatedMaterials.Of(Pattern(text, null)), report.Size));
        return GaugeTelling.Of(mine, printed);
    }

    public void Dispose() => kept.Dispose();

    /// <summary>Two hundred testers who open a link at once wait for one computation.</summary>
    private T Once<T>((string What, string Text, Terminology? Terms, int Size) key, Func<T> make) =>
        kept.GetOrCreate(key, entry =>
        {
            (entry.Size, entry.SlidingExpiration) = (1, TimeSpan.FromHours(1));
            return new Lazy<T>(make);
        })!.Value;
}
