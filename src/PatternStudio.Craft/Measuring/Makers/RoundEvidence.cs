using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring.Makers;

/// <summary>What a test round tells: measure by measure, hook by hook, and what the designer might do.</summary>
/// <param name="Measures">Those that any report speaks of.</param>
/// <param name="Hooks">One for each report that has a hook and a gauge that counts.</param>
/// <param name="Proposals">Only what the evidence carries.</param>
public sealed record RoundEvidence(EquatableArray<MeasureEvidence> Measures, EquatableArray<HookUse> Hooks, EquatableArray<Proposal> Proposals)
{
    /// <summary>Weighs reports.</summary>
    /// <param name="reports">All of a round, of whatever size.</param>
    /// <param name="expected">What the version that they worked from promises.</param>
    public static RoundEvidence Of(IReadOnlyList<MakerReport> reports, ExpectedNumbers expected)
    {
        ArgumentNullException.ThrowIfNull(reports);
        ArgumentNullException.ThrowIfNull(expected);
        MeasureEvidence[] measures = [.. new EvidenceFinder(reports, expected).All()];
        HookUse[] hooks = [.. HooksOf(reports, measures)];
        return new RoundEvidence(measures.ToEquatableArray(), hooks.ToEquatableArray(), new ProposalFinder(measures, hooks, expected).All().ToEquatableArray());
    }

    /// <summary>The evidence on one measure; null where nobody spoke of it.</summary>
    public MeasureEvidence? Of(MakerMeasure measure) => Measures.FirstOrDefault(it => it.Measure == measure);

    private static IEnumerable<HookUse> HooksOf(IReadOnlyList<MakerReport> reports, MeasureEvidence[] measures) =>
        from answer in measures.FirstOrDefault(it => it.Measure == MakerMeasure.Stitches)?.Answers ?? []
        where !answer.LeftOut && reports[answer.Report].Hook is not null
        select new HookUse(answer.Maker, reports[answer.Report].Hook!.Value, answer.Ratio);
}
