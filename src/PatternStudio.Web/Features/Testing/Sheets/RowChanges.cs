namespace PatternStudio.Web.Features.Testing.Sheets;

/// <summary>A line that another version says otherwise.</summary>
/// <param name="Place">'Row 3', or the heading under which the line stands.</param>
/// <param name="Before">As it was; empty where it is new.</param>
/// <param name="Now">As it is; empty where it is gone.</param>
public sealed record RowChange(string Place, string Before, string Now);

/// <summary>Compares two versions row by row, for testers who have begun.</summary>
internal static class RowChanges
{
    public static IReadOnlyList<RowChange> Between(Sheet before, Sheet now)
    {
        (string Place, string Text)[] old = [.. Lines(before)], current = [.. Lines(now)];
        var changes = new List<RowChange>();
        var unmatched = old.ToList();
        var left = new List<(string Place, string Text)>();
        foreach ((string Place, string Text) line in current)
            if (!unmatched.Remove(line))
                left.Add(line);
        foreach ((string place, string text) in left)
        {
            int at = unmatched.FindIndex(line => line.Place == place);
            changes.Add(new RowChange(place, at < 0 ? "" : unmatched[at].Text, text));
            if (at >= 0) unmatched.RemoveAt(at);
        }

        changes.AddRange(unmatched.Select(line => new RowChange(line.Place, line.Text, "")));
        return changes;
    }

    /// <summary>Rows by their name, other lines by the heading above them.</summary>
    private static IEnumerable<(string Place, string Text)> Lines(Sheet sheet)
    {
        string heading = "";
        foreach (SheetBlock block in sheet.Blocks)
        {
            if (block.Kind == SheetBlockKind.Heading) heading = block.Text;
            yield return (block.Kind == SheetBlockKind.Row ? block.Row : heading, block.Text);
        }
    }
}
