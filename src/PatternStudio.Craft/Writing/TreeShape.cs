using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Writing;

/// <summary>
/// What a tree says, whatever the words and wherever they stand: two texts with the same shape give the same instructions. Written as indented
/// lines, so that a difference can be shown. New nodes and properties of the tree take part by themselves.
/// </summary>
public static class TreeShape
{
    /// <summary>How a thing is written, or how a decision came about, not what is said.</summary>
    private static readonly HashSet<(Type, string)> Wording =
    [
        (typeof(RowHeading), nameof(RowHeading.Text)),
        (typeof(StatedCount), nameof(StatedCount.Text)),
        (typeof(RepeatStep), nameof(RepeatStep.Mark)),
        (typeof(TermsDecision), nameof(TermsDecision.Origin)),
        (typeof(TermsDecision), nameof(TermsDecision.Sureness)),
        (typeof(TermsDecision), nameof(TermsDecision.Evidence)),
        (typeof(TermsDecision), nameof(TermsDecision.Against)),
    ];

    private static readonly Type[] Places = [typeof(TextSpan), typeof(TextSpan?), typeof(SourceText)];

    /// <summary>Words kept as they were written: they differ where the same work is told in other terms.</summary>
    private static readonly HashSet<(Type, string)> Verbatim =
    [
        (typeof(RemarkStep), nameof(RemarkStep.Text)),
        (typeof(UnreadStep), nameof(UnreadStep.Text)),
        (typeof(UnreadStep), nameof(UnreadStep.Nearest)),
        (typeof(UncountedStep), nameof(UncountedStep.Text)),
        (typeof(Passage), nameof(Passage.Text)),
        (typeof(Piece), nameof(Piece.Name)),
        (typeof(Statement), nameof(Statement.Text)),
        (typeof(StitchDefinition), nameof(StitchDefinition.Names)),
        (typeof(Pattern), nameof(Pattern.Terms)),
    ];

    /// <summary>The shape of a whole pattern.</summary>
    /// <param name="workOnly">True to leave out words kept as they were written, and the terminology: what is worked remains.</param>
    public static string Of(Pattern pattern, bool workOnly = false) => Lines(pattern, workOnly, workOnly ? SpecialNames(pattern) : []);

    /// <summary>The shape of a step.</summary>
    public static string Of(Step step) => Lines(step, workOnly: false, []);

    /// <summary>The first line in which two patterns differ, as 'this, not that'; null where they say the same.</summary>
    public static string? FirstDifference(Pattern left, Pattern right, bool workOnly = false)
    {
        string[] ours = Of(left, workOnly).Split('\n');
        string[] theirs = Of(right, workOnly).Split('\n');
        int at = 0;
        while (at < ours.Length && at < theirs.Length && ours[at] == theirs[at]) at++;
        if (at == ours.Length && at == theirs.Length) return null;
        return $"line {at + 1}: '{Line(ours, at)}', not '{Line(theirs, at)}'";
    }

    private static string Line(string[] lines, int at) => at < lines.Length ? lines[at].Trim() : "nothing";

    /// <summary>A special stitch is known by its place among the definitions: its key comes from its name, which may be '3-dc cluster'.</summary>
    private static Dictionary<StitchId, string> SpecialNames(Pattern pattern) =>
        pattern.Definitions.Select(definition => definition.Id).Distinct()
            .Where(id => Vocabulary.Standard.Find(id) is null)
            .Select((id, index) => (id, index))
            .ToDictionary(special => special.id, special => $"special stitch {special.index + 1}");

    private static string Lines(object node, bool workOnly, Dictionary<StitchId, string> special)
    {
        var shape = new StringBuilder();
        Write(new Sheet(shape, workOnly, special), "", node, 0);
        return shape.ToString();
    }

    private readonly record struct Sheet(StringBuilder Lines, bool WorkOnly, Dictionary<StitchId, string> Special);

    private static void Write(Sheet shape, string name, object? value, int depth)
    {
        if (value is null || IsEmpty(value)) return;
        shape.Lines.Append(' ', depth).Append(name);
        switch (value)
        {
            case StitchId stitch when shape.Special.TryGetValue(stitch, out string? special):
                shape.Lines.Append(special).Append('\n');
                break;
            case TextSpan:
                shape.Lines.Append("words\n");
                break;
            case string or Enum or bool or IFormattable or ITuple or StitchId:
                shape.Lines.Append(Convert.ToString(value, CultureInfo.InvariantCulture)).Append('\n');
                break;
            case IEnumerable items:
                shape.Lines.Append('\n');
                foreach (object? item in items) WriteItem(shape, item, depth + 1);
                break;
            default:
                shape.Lines.Append(value.GetType().Name).Append('\n');
                foreach (PropertyInfo property in Said(value.GetType(), shape.WorkOnly)) Write(shape, property.Name + ": ", property.GetValue(value), depth + 1);
                break;
        }
    }

    private static bool IsEmpty(object value) => value is not string && value is IEnumerable items && !items.Cast<object?>().Any();

    /// <summary>A missing item keeps its place: '-' in a size list.</summary>
    private static void WriteItem(Sheet shape, object? item, int depth)
    {
        if (item is null) shape.Lines.Append(' ', depth).Append("-\n");
        else Write(shape, "", item, depth);
    }

    /// <summary>What a node says: properties that are set, spans and wording left out.</summary>
    private static IEnumerable<PropertyInfo> Said(Type type, bool workOnly) =>
        type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.CanWrite && property.GetIndexParameters().Length == 0)
            .Where(property => !Places.Contains(property.PropertyType) && !Wording.Contains((property.DeclaringType!, property.Name)))
            .Where(property => !workOnly || !Verbatim.Contains((property.DeclaringType!, property.Name)))
            .OrderBy(property => property.Name, StringComparer.Ordinal);
}
