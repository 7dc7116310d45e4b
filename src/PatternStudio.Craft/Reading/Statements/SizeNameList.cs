using PatternStudio.Craft.Reading.Tokens;

namespace PatternStudio.Craft.Reading.Statements;

/// <summary>Reads the names of sizes: 'Small (Medium, Large)', 'S (M, L, XL)', '40 cm (50 cm)'.</summary>
internal static class SizeNameList
{
    private const int MostSizes = 50;

    public static IReadOnlyList<string>? Of(Cursor cursor)
    {
        string line = cursor.Slice(cursor.At, cursor.End);
        string[] names = line.Split(['(', ')', ',', '[', ']', '{', '}', ';', '.'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return names.Length is > 1 and <= MostSizes ? names : null;
    }
}
