using System.Text;
using CsCheck;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Tests.Reading;

/// <summary>The reader reads every text: nothing throws, and every span lies in the text.</summary>
public sealed class TotalityTests
{
    private static readonly string[] Words =
    [
        "Row", "Rnd", "1", "2", "3:", "ch", "sc", "dc", "in", "next", "each", "st", "sts", "across", "*", "**", "(", ")", "[", "]", "{", ",", ";", ".", "rep", "from", "to", "last", "twice", "turn", "join",
        "with", "sl st", "first", "ch-2", "sp", "sk", "of", "and", "top", "beg", "tch", "\n", "\n\n", "—", "½", "x", "6", "until", "piece", "measures", "40", "cm", "counts", "as", "5 times", "A", "same", "2nd", "from hook",
        "=", ":", "yo", "insert hook", "draw up a loop", "(2, 3)", "shell", "V-st", "make", "magic ring", "'", "\"", "é", "\u00A0", "\r", "\0", "𝄞", "99999999999",
    ];

    private static readonly Gen<string> WordSalad = Gen.Int[0, Words.Length - 1].Select(i => Words[i]).Array[0, 60].Select(words => string.Join(' ', words));

    private static readonly string[] Right =
        [.. Directory.EnumerateFiles(Repository.Path("tests/PatternStudio.Craft.Tests/RightPatterns"), "*.txt").Order(StringComparer.Ordinal).Take(60).Select(File.ReadAllText)];

    private static readonly Gen<string> Mutated =
        Gen.Select(Gen.Int[0, Right.Length - 1].Select(i => Right[i]), Gen.Int[0, 5000], Gen.Int[0, 40], Gen.Int[0, Words.Length - 1].Select(i => Words[i]), (text, at, cut, word) =>
        {
            int start = at % Math.Max(1, text.Length);
            return string.Concat(text.AsSpan(0, start), word, text.AsSpan(Math.Min(text.Length, start + cut)));
        });

    [Fact]
    public void Any_words_in_any_order_are_read() => WordSalad.Sample(text => SpansLieInText(PatternReader.Read(text)), iter: 2000);

    [Fact]
    public void A_right_pattern_with_something_cut_or_put_in_is_read() => Mutated.Sample(text => SpansLieInText(PatternReader.Read(text)), iter: 500);

    [Fact]
    public void Any_characters_are_read() => Gen.String[0, 200].Sample(text => SpansLieInText(PatternReader.Read(text)), iter: 2000);

    /// <summary>What stands on the desk while a line is being typed: every line of every right pattern, broken off behind each of its words.</summary>
    [Fact]
    public void A_line_that_breaks_off_behind_any_word_is_read()
    {
        foreach (string line in Directory.EnumerateFiles(Repository.Path("tests/PatternStudio.Craft.Tests/RightPatterns"), "*.txt").SelectMany(File.ReadLines).Distinct())
        {
            for (int end = line.IndexOf(' ', StringComparison.Ordinal); end > 0; end = line.IndexOf(' ', end + 1))
                Assert.True(SpansLieInText(PatternReader.Read(line[..end])), line[..end]);
        }
    }

    [Theory]
    [InlineData('(', ')')]
    [InlineData('[', ']')]
    public void Ten_thousand_brackets_are_too_many_and_said_so(char open, char close)
    {
        string text = $"Row 1: {new string(open, 10_000)}sc in next st{new string(close, 10_000)} twice.";
        Assert.Contains(PatternReader.Read(text).Troubles, trouble => trouble.Kind == ReadingTroubleKind.TooLarge);
    }

    [Theory]
    [InlineData("in next ")]
    [InlineData("and in next sp work ch 1, ")]
    [InlineData("* sc in next st, ")]
    [InlineData("; rep from * ending with sc in next st")]
    [InlineData("sc in next st, repeat, ")]
    [InlineData("or sc ")]
    [InlineData("in next sp work ch 1, (")]
    [InlineData("a,")]
    [InlineData("1st, ")]
    public void The_same_words_fifty_thousand_times_are_read(string words) =>
        Assert.True(SpansLieInText(PatternReader.Read("Row 1: *sc in next st, " + string.Concat(Enumerable.Repeat(words, 50_000)))));

    [Fact]
    public void A_text_beyond_the_limit_is_read_up_to_it()
    {
        var text = new StringBuilder("Ch 21.\n");
        for (int row = 1; text.Length < ReadingLimits.Characters + 1000; row++) text.Append("Row ").Append(row).Append(": Ch 1, turn, *sc in next st, ch 1; rep from * across. (20 sc)\n");
        Pattern pattern = PatternReader.Read(text.ToString());
        Assert.Contains(pattern.Troubles, trouble => trouble is { Kind: ReadingTroubleKind.TooLarge, Detail: "characters" });
        Assert.True(SpansLieInText(pattern));
    }

    [Fact]
    public void Bytes_that_are_no_writing_are_said_to_be_none() =>
        Assert.Contains(PatternReader.Read("\u0089PNG\r\n\u001A\n\0\0\0\rIHDR").Troubles, trouble => trouble.Kind == ReadingTroubleKind.NotText);

    private static bool SpansLieInText(Pattern pattern)
    {
        int length = pattern.Source.Content.Length;
        bool In(TextSpan span) => span.Start >= 0 && span.Length >= 0 && span.End <= length;
        bool All(EquatableArray<Step> steps) => steps.All(step => In(step.Span) && step switch
        {
            GroupStep group => All(group.Steps) && In(group.Where.Span),
            RepeatStep repeat => All(repeat.Steps) && All(repeat.Ending) && In(repeat.Extent.Span),
            StitchStep stitch => stitch.Where is null || In(stitch.Where.Span),
            _ => true,
        });
        return pattern.Troubles.All(trouble => In(trouble.Span))
            && pattern.Pieces.SelectMany(piece => piece.Items).All(item => In(item.Span) && (item is not RowInstruction row || (All(row.Steps) && In(row.Heading.Span))));
    }
}
