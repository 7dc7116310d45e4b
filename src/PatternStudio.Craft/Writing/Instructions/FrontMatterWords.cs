using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Writing.Instructions;

/// <summary>Writes what stands before the rows: title, statements with their labels, special stitches.</summary>
internal static class FrontMatterWords
{
    public static IEnumerable<string> Lines(Pattern pattern)
    {
        foreach (Statement statement in pattern.Statements.Where(statement => !IsPartOfAnother(pattern, statement)))
        {
            yield return Line(statement);
            if (statement.Kind == StatementKind.Title) yield return "";
        }

        List<StitchDefinition> definitions = [.. pattern.Definitions.Where(definition => !IsInARow(pattern, definition.Span))];
        if (definitions.Count == 0) yield break;
        yield return "Special stitches";
        foreach (StitchDefinition definition in definitions) yield return Line(pattern, definition);
    }

    /// <summary>'(cluster st: 3 dc in same sp …)' in a row stays there as a remark.</summary>
    private static bool IsInARow(Pattern pattern, TextSpan span) => pattern.Pieces.Any(piece => piece.Items.Any(item => item.Span.Contains(span)));

    /// <summary>What a note or a remark says of turning chains is read from it again.</summary>
    private static bool IsPartOfAnother(Pattern pattern, Statement statement) =>
        statement.Kind == StatementKind.TurningChain
        && (pattern.Statements.Any(other => other.Kind != StatementKind.TurningChain && other.Span.Contains(statement.Span))
            || IsInARow(pattern, statement.Span));

    private static string Line(Statement statement)
    {
        string text = statement.Text.ReplaceLineEndings(" ");
        return Label(statement) is { } label ? $"{label}: {text}" : text;
    }

    private static string? Label(Statement statement) => statement.Kind switch
    {
        StatementKind.Gauge => "Gauge",
        StatementKind.FinishedSize => "Finished size",
        StatementKind.Yarn => "Yarn",
        StatementKind.Hook => "Hook",
        StatementKind.Sizes => "Sizes",
        StatementKind.Level => "Level",
        StatementKind.Note => "Note",
        StatementKind.Abbreviation => "Abbreviations",
        StatementKind.Multiple when !statement.Text.StartsWith("multiple of", StringComparison.OrdinalIgnoreCase) => "Stitch multiple",
        _ => null,
    };

    private static string Line(Pattern pattern, StitchDefinition definition)
    {
        string body = pattern.Source.Slice(definition.Body).Trim().ReplaceLineEndings(" ");
        return $"{Name(definition)}: {body}";
    }

    /// <summary>'Puff stitch (puff)'.</summary>
    private static string Name(StitchDefinition definition) => definition.Names.Count switch
    {
        0 => definition.Id.Value,
        1 => definition.Names[0],
        _ => $"{definition.Names[1]} ({definition.Names[0]})",
    };
}
