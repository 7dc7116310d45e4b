using System.Globalization;

namespace PatternStudio.Craft.Measuring.Makers;

/// <summary>Finds what the evidence carries: three makers at least, a difference beyond chance and beyond what the tape tells.</summary>
internal sealed class ProposalFinder(IReadOnlyList<MeasureEvidence> measures, IReadOnlyList<HookUse> hooks, ExpectedNumbers expected)
{
    /// <summary>A tenth more or less yarn is within the usual reserve.</summary>
    private const double YarnMatters = 0.1;

    public IEnumerable<Proposal> All()
    {
        foreach (MakerMeasure measure in (MakerMeasure[])[MakerMeasure.Stitches, MakerMeasure.Rows])
            if (Find(measure) is { } gauge && gauge.Differs(HookUse.SameGauge))
                yield return OfGauge(gauge);
        foreach (MakerMeasure measure in (MakerMeasure[])[MakerMeasure.Width, MakerMeasure.Height])
            if (Find(measure) is { } side && side.Differs(HookUse.SameGauge))
                yield return OfSide(side);
        if (Find(MakerMeasure.Yarn) is { } yarn && yarn.Differs(YarnMatters)) yield return OfYarn(yarn);
        if (OtherHook() is { } other) yield return other;
    }

    private MeasureEvidence? Find(MakerMeasure measure) => measures.FirstOrDefault(it => it.Measure == measure);

    private Proposal OfGauge(MeasureEvidence gauge)
    {
        bool stitches = gauge.Measure == MakerMeasure.Stitches;
        double printed = (stitches ? expected.Gauge?.StitchesToTen : expected.Gauge?.RowsToTen) ?? 0;
        string unit = stitches ? "sts" : "rows", tight = gauge.Median > 1 ? "larger" : "smaller";
        string question = $"Printed gauge {One(printed)} {unit} to 10 cm, testers' median {One(printed * gauge.Median)} (n = {gauge.Makers}): "
            + (stitches ? $"recommend a {tight} hook, or change the numbers?" : "change the printed gauge, or the number of rows?");
        return new Proposal(ProposalKind.Gauge, gauge.Measure, question, EffectOfGauge(gauge, stitches), gauge.Makers);
    }

    private string EffectOfGauge(MeasureEvidence gauge, bool stitches)
    {
        var parts = new List<string>();
        for (int size = 0; size < expected.Sizes.Count && size < 3; size++)
            if ((stitches ? expected.Sizes[size].Width : expected.Sizes[size].Height) is { } side)
                parts.Add($"{(side / gauge.Median).InCentimetres()} instead of {side.InCentimetres()}");
        string became = parts.Count > 0 ? $" ({string.Join("; ", parts)})" : "";
        string direction = stitches ? gauge.Median > 1 ? "narrower" : "wider" : gauge.Median > 1 ? "shorter" : "longer";
        string keep = $"To keep the size at the testers' gauge takes {Percent(Math.Abs(gauge.Median - 1))} {(gauge.Median > 1 ? "more" : "fewer")} {(stitches ? "stitches" : "rows")}";
        // Testers' yarn is for the numbers as they are, at their own gauge: so many stitches more take so much more of it.
        string yarn = Find(MakerMeasure.Yarn) is { Makers: > 1, Median: var used } ? $"; they use {Percent(used)} of the expected yarn now, and would use {Percent(used * gauge.Median)}." : "; what that does to the yarn is not known until testers weigh theirs.";
        return $"With the numbers as they are, pieces come out {Percent(Math.Abs((1 / gauge.Median) - 1))} {direction}{became}. {keep}{yarn}";
    }

    private static Proposal OfSide(MeasureEvidence side)
    {
        string name = side.Measure == MakerMeasure.Width ? "width" : "height";
        return new Proposal(ProposalKind.Size, side.Measure, $"Testers' finished {name} is {Percent(side.Median)} of the printed one (n = {side.Makers}): print what they got, or change the numbers?", "", side.Makers);
    }

    private Proposal OfYarn(MeasureEvidence yarn)
    {
        string amount = string.Join("; ", expected.Sizes.Where(size => size.Yarn is not null).Take(3)
            .Select(size => $"{Metres(yarn.Of(size.Yarn!.Value.Metres)!.Value.Buy)} instead of {Metres(size.Yarn.Value.Metres)}"));
        return new Proposal(ProposalKind.Yarn, MakerMeasure.Yarn,
            $"Testers used {Percent(yarn.Median)} of the expected yarn (n = {yarn.Makers}): print another amount?",
            $"What nine makers in ten will not run out of: {amount}.", yarn.Makers);
    }

    /// <summary>Where at least three met the gauge and most of them with one and the same other hook.</summary>
    private Proposal? OtherHook()
    {
        HookUse[] met = [.. hooks.Where(use => use.Verdict == HookVerdict.Met)];
        if (expected.Hook is not { } named || met.Length < 3) return null;
        IGrouping<double, HookUse> most = met.GroupBy(use => use.Hook.Millimetres).OrderByDescending(same => same.Count()).First();
        if (Math.Abs(most.Key - named.Millimetres) < 0.01 || most.Count() * 3 < met.Length * 2) return null;
        return new Proposal(ProposalKind.Hook, MakerMeasure.Stitches,
            $"{most.Count()} of {met.Length} testers who got the gauge used {new HookSize(most.Key)}, and the pattern names {named}: name theirs?", "", met.Length);
    }

    private static string One(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);

    private static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{share * 100:0} %");

    private static string Metres(double metres) => string.Create(CultureInfo.InvariantCulture, $"{metres:0} m");
}
