using Microsoft.EntityFrameworkCore;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Measuring.Makers;
using PatternStudio.Craft.Text;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using Length = PatternStudio.Craft.Measuring.Length;

namespace PatternStudio.Studio.Rounds;

/// <summary>What a round tells, size by size.</summary>
/// <param name="Evidence">Measure by measure; answers are in the order of the reports.</param>
/// <param name="Expected">What was promised; the sizes of the round's own version come first.</param>
/// <param name="Sizes">The names of those sizes; one empty name where there is one.</param>
public sealed record RoundTelling(RoundEvidence Evidence, ExpectedNumbers Expected, IReadOnlyList<string> Sizes);

/// <summary>Weighs the reports of a round against the versions that they were worked from.</summary>
public sealed class RoundStatistics(IDbContextFactory<StudioDbContext> contexts)
{
    /// <summary>What the reports of a round tell. Computes each version that anybody worked from.</summary>
    public async Task<RoundTelling> TellAsync(Caller caller, RoundBook book, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(book);
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        Design design = await context.DesignsOf(caller).FirstAsync(it => it.Id == book.DesignId, cancel);
        DesignMaterials materials = await context.MaterialsOfAsync(design, cancel);
        int[] versions = [book.Plan.Version, .. book.Reports.Select(report => report.Version).Where(number => number != book.Plan.Version).Distinct()];
        var texts = await context.Versions.Where(it => it.DesignId == design.Id && versions.Contains(it.Number)).ToDictionaryAsync(it => it.Number, it => it.Text, cancel);
        return await Task.Run(() => Tell(book.Reports, versions, texts, materials), cancel);
    }

    private static RoundTelling Tell(IReadOnlyList<KeptReport> reports, int[] versions, Dictionary<int, string> texts, DesignMaterials materials)
    {
        Expectation[] promised = [.. versions.Select(version => Expectation.Of(texts[version], materials))];
        int[] offsets = new int[versions.Length];
        for (int i = 1; i < versions.Length; i++) offsets[i] = offsets[i - 1] + promised[i - 1].Sizes.Count;
        ExpectedNumbers all = promised[0].Numbers with { Sizes = promised.SelectMany(it => it.Numbers.Sizes).ToEquatableArray() };
        MakerReport[] made = [.. reports.Select(report => ToMaker(report, offsets[Array.IndexOf(versions, report.Version)]))];
        return new RoundTelling(RoundEvidence.Of(made, all), all, promised[0].Sizes);
    }

    /// <summary>A report as the engine weighs it.</summary>
    private static MakerReport ToMaker(KeptReport report, int offset)
    {
        ReportDetails told = report.Details;
        return new MakerReport(report.TesterId.ToString(), offset + told.Size)
        {
            Gauge = Gauge(told.Stitches, told.Rows, told.OverCm),
            BeforeBlocking = Gauge(told.StitchesBefore, told.RowsBefore, told.OverCm),
            Hook = told.HookMm is { } hook ? new HookSize(hook) : null,
            Width = Cm(told.WidthCm),
            Height = Cm(told.HeightCm),
            YarnUsed = told.YarnGrams is { } grams ? Mass.FromGrams(grams) : null,
            Yarn = told is { BallMetres: { } metres, BallGrams: { } ball } ? new YarnLabel(YarnLength.FromMetres(metres), Mass.FromGrams(ball)) : null,
            Time = told.Minutes is { } minutes ? TimeSpan.FromMinutes(minutes) : null,
        };
    }

    private static CountedGauge? Gauge(double? stitches, double? rows, double? over) =>
        over is { } cm && (stitches ?? rows) is not null ? new CountedGauge(stitches, rows, Length.FromCentimetres(cm), Length.FromCentimetres(cm)) : null;

    private static Length? Cm(double? cm) => cm is { } known ? Length.FromCentimetres(known) : null;
}
