using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Designs;

/// <summary>Computes what the desk shows, without saving: the same numbers that a save stores.</summary>
public static class DesignResults
{
    /// <summary>The make of the engine, kept beside everything it computes.</summary>
    public static string EngineVersion => EngineStamp.Text;

    /// <summary>Computes the results of a text. Pure: the same input gives the same results, and nothing is read or written.</summary>
    /// <param name="text">The pattern.</param>
    /// <param name="swatch">The swatch that calibrates size and yarn; null for none.</param>
    /// <param name="yarn">The yarn it is made of; null for none.</param>
    public static Results Compute(string text, SwatchDetails? swatch = null, YarnDetails? yarn = null) =>
        Reckon(text, DesignMaterials.Of(swatch, yarn)).Results;

    /// <summary>The same from all swatches of a design, with the schedules that are too large to be stored.</summary>
    public static Reckoned Reckon(string text, DesignMaterials materials) => Reckon(PatternCheck.Check(text), materials);

    /// <summary>The same of a pattern that is checked already.</summary>
    public static Reckoned Reckon(CheckedPattern pattern, DesignMaterials materials)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentNullException.ThrowIfNull(materials);
        MeasuringBasis basis = materials.ToBasis(pattern);
        Measured<RowSchedule>[] schedules = [.. Enumerable.Range(0, pattern.Sizes.Count).Select(size => RowSchedule.Compute(pattern, basis, size))];
        var results = new Results(
            EngineVersion,
            pattern.Pattern.Terms.Terminology == Terminology.Uk ? "UK" : "US",
            FindingsOf(pattern),
            [.. schedules.Select((schedule, size) => OfSize(pattern, size, schedule, basis.Yarn))]);
        return new Reckoned(results, schedules, pattern);
    }

    /// <summary>The row schedule of the first size alone.</summary>
    internal static Measured<RowSchedule> Schedule(string text, DesignMaterials materials)
    {
        CheckedPattern pattern = PatternCheck.Check(text);
        return RowSchedule.Compute(pattern, materials.ToBasis(pattern), 0);
    }

    /// <summary>The findings with their places. Before anything is written there is nothing to find fault with.</summary>
    public static IReadOnlyList<LocatedFinding> FindingsOf(CheckedPattern pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        SourceText source = pattern.Pattern.Source;
        return string.IsNullOrWhiteSpace(source.Content) ? [] : [.. pattern.Findings.Select(finding => Locate(source, finding))];
    }

    private static LocatedFinding Locate(SourceText source, Finding finding)
    {
        LinePosition position = source.Locate(finding.Span.Start);
        return new LocatedFinding(finding, position.Line, position.Column);
    }

    private static SizeResults OfSize(CheckedPattern pattern, int size, Measured<RowSchedule> schedule, YarnLabel? label)
    {
        CheckedSize worked = pattern.Sizes[size];
        var bare = new SizeResults(worked.Name, worked.Read, [.. worked.Rows], [], null, null) { Laws = [.. worked.Laws.Select(law => law.Sentence)] };
        return schedule.IsKnown
            ? new ScheduleResults(schedule.Value, label).AddTo(bare)
            : bare with { WhyNoSize = schedule.Trace, WhyNoYarn = schedule.Trace };
    }
}

/// <summary>Everything computed from a text and its materials: what is stored, and the schedule of each size as the engine gives it.</summary>
/// <param name="Pattern">The pattern as read and worked, to be drawn from.</param>
public sealed record Reckoned(Results Results, IReadOnlyList<Measured<RowSchedule>> Schedules, CheckedPattern Pattern);
