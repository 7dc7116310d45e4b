using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Definitions;

/// <summary>The name part of a definition: 'Puff stitch (puff)', 'V-st', '3-dc cluster (cl)'.</summary>
/// <param name="Id">The key that rows will find it by.</param>
/// <param name="Names">Every name given, as written.</param>
/// <param name="Known">The vocabulary's stitch of that name; null for a name of the designer's own.</param>
/// <param name="HasAbbreviation">True where an abbreviation stands in brackets.</param>
internal sealed record DefinitionNames(StitchId Id, IReadOnlyList<string> Names, StitchId? Known, bool HasAbbreviation)
{
    private const int MostTokens = 12;

    /// <summary>Takes the names and the mark after them (':', '=', '—'); null where no such beginning stands here.</summary>
    public static DefinitionNames? Take(Cursor cursor)
    {
        int from = cursor.At;
        int nameEnd = from;
        while (nameEnd < cursor.End && nameEnd - from < MostTokens && IsOfName(cursor.Context.Tokens[nameEnd])) nameEnd++;
        if (nameEnd == from || nameEnd >= cursor.End) return null;
        var names = new List<string> { cursor.Slice(from, nameEnd) };
        cursor.At = nameEnd;
        bool abbreviated = TakeAbbreviation(cursor, names);
        if (!TakeMark(cursor)) return null;
        return Of(cursor, names, abbreviated);
    }

    private static bool IsOfName(in Token token) =>
        token.Kind is TokenKind.Word or TokenKind.Number or TokenKind.Hyphen or TokenKind.Slash or TokenKind.Comma && token.Word is not ("=" or "with" or "join");

    private static bool TakeAbbreviation(Cursor cursor, List<string> names)
    {
        int partner = cursor.Partner();
        if (partner < 0 || partner - cursor.At > MostTokens) return false;
        names.Insert(0, cursor.Slice(cursor.At + 1, partner));
        cursor.At = partner + 1;
        return true;
    }

    private static bool TakeMark(Cursor cursor)
    {
        bool marked = cursor.Kind is TokenKind.Colon or TokenKind.Dash or TokenKind.Equal;
        if (marked) cursor.At++;
        return marked;
    }

    private static DefinitionNames Of(Cursor cursor, List<string> names, bool abbreviated)
    {
        Terminology terms = cursor.Context.Terminology;
        StitchId? known = names.Select(name => Vocabulary.Standard.Meaning(name, terms) ?? ClusterOf(name)).FirstOrDefault(id => id is not null);
        StitchId id = Vocabulary.Standard.Meaning(names[0], terms) ?? new StitchId(Key(names[0]));
        return new DefinitionNames(id, names, known, abbreviated);
    }

    private static StitchId? ClusterOf(string name) =>
        name.Contains("cluster", StringComparison.OrdinalIgnoreCase) ? new StitchId(Key(name)) : null;

    /// <summary>A key of the designer's own name: lower case, letters and digits only.</summary>
    private static string Key(string name)
    {
        string key = string.Concat(name.ToLowerInvariant().Where(char.IsLetterOrDigit));
        return key.Length > 0 ? key : "special";
    }
}
