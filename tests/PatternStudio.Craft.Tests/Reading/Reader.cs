using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Tests.Reading;

/// <summary>Reads a row, or a pattern, for the tables of these tests.</summary>
internal static class Reader
{
    /// <summary>The steps of one row, in short.</summary>
    public static string Steps(string row, Terminology terms = Terminology.Us) => TreeText.Of(Row(row, terms).Steps);

    /// <summary>The row itself.</summary>
    public static RowInstruction Row(string row, Terminology terms = Terminology.Us) =>
        PatternReader.Read($"Row 5: {row}", terms).Pieces[0].Items.OfType<RowInstruction>().First();

    /// <summary>The whole pattern, in short.</summary>
    public static string Pattern(string text, Terminology terms = Terminology.Us) => TreeText.Of(PatternReader.Read(text, terms));
}
