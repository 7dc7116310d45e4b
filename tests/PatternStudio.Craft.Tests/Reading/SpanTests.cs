using System.Text.RegularExpressions;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Tests.Reading;

/// <summary>Every character of a row belongs to a heading, a step, a count or a separator, and every step lies inside its row.</summary>
public sealed partial class SpanTests
{
    public static TheoryData<string> Patterns =>
        [.. Directory.EnumerateFiles(Repository.Path("tests/PatternStudio.Craft.Tests/RightPatterns"), "*.txt").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Patterns))]
    public void No_word_of_a_row_is_lost(string name)
    {
        Pattern pattern = PatternReader.Read(File.ReadAllText(Repository.Path($"tests/PatternStudio.Craft.Tests/RightPatterns/{name}.txt")));
        foreach (RowInstruction row in pattern.Pieces.SelectMany(piece => piece.Items).OfType<RowInstruction>())
        {
            Assert.All(row.Steps, step => Assert.True(row.Span.Contains(step.Span), $"{TreeText.Of(step)} outside its row"));
            Assert.Matches(Separators(), Uncovered(pattern.Source, row));
        }
    }

    private static string Uncovered(SourceText source, RowInstruction row)
    {
        char[] words = source.Slice(row.Span).ToCharArray();
        foreach (TextSpan span in row.Steps.Select(step => step.Span).Append(row.Heading.Span).Concat(row.Stated is null ? [] : [row.Stated.Span]))
            for (int i = span.Start; i < span.End; i++)
                if (i >= row.Span.Start && i < row.Span.End) words[i - row.Span.Start] = ' ';
        return new string(words);
    }

    [GeneratedRegex(@"^(?:[\s,;.:()\[\]{}*=|—–\-]|and\b|then\b|now\b|also\b|next\b)*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Separators();
}
