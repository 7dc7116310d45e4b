using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>The stitches of the pattern's terms, and those that it defines itself.</summary>
internal static class StitchProposals
{
    /// <summary>The pattern's own stitches first, then those it uses, then the others, the plain ones before their families.</summary>
    public static IEnumerable<Proposal> Of(RowsAbove above)
    {
        foreach (StitchDefinition own in above.Pattern.Definitions)
            foreach (string name in own.Names)
                yield return new(InARow(name), own.Names.Count > 1 && name != own.Names[0] ? $"{own.Names[0]}, defined in this pattern" : "defined in this pattern");
        HashSet<string> used = [.. above.Piece is { } piece ? piece.Rows.TakeLast(2).SelectMany(row => row.Counts).Select(kind => kind.Key) : []];
        foreach (StitchTerm term in Vocabulary.Standard.Terms.OrderByDescending(term => used.Contains(term.Id.Value)).ThenByDescending(term => term.Base == term.Id))
        {
            string[] names = [.. term.Names(above.Terms).Take(2)];
            if (names.Length == 0) continue;
            yield return new(names[0], names[^1]);
            if (names.Length > 1 && names[1].Length > names[0].Length) yield return new(names[1], names[0]);
        }
    }

    private static string InARow(string name) =>
        name.Length > 1 && char.IsUpper(name[0]) && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;
}
