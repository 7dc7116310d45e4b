using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text;
using PatternStudio.Craft.Reading.Tree;
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
        (typeof(TermsDecision), nameof(TermsDecision.Origin)),
        (typeof(TermsDecision), nameof(TermsDecision.Sureness)),
        (typeof(TermsDecision), nameof(TermsDecision.Evidence)),
        (typeof(TermsDecision), nameof(TermsDecision.Against)),
    ];

    /// <summary>The shape of a whole pattern.</summary>
    public static string Of(Pattern pattern) => Lines(pattern);

    /// <summary>The shape of a step.</summary>
    public static string Of(Step step) => Lines(step);

    /// <summary>The first line in which two patterns differ, as 'this, not that'; null where they say the same.</summary>
    public static string? FirstDifference(Pattern left, Pattern right)
    {
        string[] ours = Of(left).Split('\n');
        string[] theirs = Of(right).Split('\n');
        int at = 0;
        while (at < ours.Length && at < theirs.Length && ours[at] == theirs[at]) at++;
        if (at == ours.Length && at == theirs.Length) return null;
        return $"line {at + 1}: '{Line(ours, at)}', not '{Line(theirs, at)}'";
    }

    private static string Line(string[] lines, int at) => at < lines.Length ? lines[at].Trim() : "nothing";

    private static string Lines(object node)
    {
        var shape = new StringBuilder();
        Write(shape, "", node, 0);
        return shape.ToString();
    }

    private static void Write(StringBuilder shape, string name, object? value, int depth)
    {
        if (value is null || IsEmpty(value)) return;
        shape.Append(' ', depth).Append(name);
        switch (value)
        {
            case string or Enum or bool or IFormattable or ITuple or Terms.StitchId:
                shape.Append(Convert.ToString(value, CultureInfo.InvariantCulture)).Append('\n');
                break;
            case IEnumerable items:
                shape.Append('\n');
                foreach (object? item in items) WriteItem(shape, item, depth + 1);
                break;
            default:
                shape.Append(value.GetType().Name).Append('\n');
                foreach (PropertyInfo property in Said(value.GetType())) Write(shape, property.Name + ": ", property.GetValue(value), depth + 1);
                break;
        }
    }

    private static bool IsEmpty(object value) => value is not string && value is IEnumerable items && !items.Cast<object?>().Any();

    /// <summary>A missing item keeps its place: '-' in a size list.</summary>
    private static void WriteItem(StringBuilder shape, object? item, int depth)
    {
        if (item is null) shape.Append(' ', depth).Append("-\n");
        else Write(shape, "", item, depth);
    }

    /// <summary>What a node says: properties that are set, spans and wording left out.</summary>
    private static IEnumerable<PropertyInfo> Said(Type type) =>
        type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.CanWrite && property.GetIndexParameters().Length == 0)
            .Where(property => property.PropertyType != typeof(TextSpan) && property.PropertyType != typeof(SourceText))
            .Where(property => !Wording.Contains((property.DeclaringType!, property.Name)))
            .OrderBy(property => property.Name, StringComparer.Ordinal);
}
