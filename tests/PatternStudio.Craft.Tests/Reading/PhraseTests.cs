using PatternStudio.Craft.Reading.Tokens;

namespace PatternStudio.Craft.Tests.Reading;

/// <summary>Phrases, and the marks by which those that can't stand here are passed over.</summary>
public sealed class PhraseTests
{
    [Theory]
    [InlineData("in the? next", "in next", true)]
    [InlineData("in the? next", "in the next", true)]
    [InlineData("in the? next", "on next", false)]
    [InlineData("a|one st", "an st", true)]
    [InlineData("a magic ring", "an magic ring", true)]
    [InlineData("first sc", "1st sc", true)]
    [InlineData("first sc", "2nd sc", false)]
    [InlineData("the? ## row", "2nd row", true)]
    [InlineData("ch #", "ch-3", true)]
    [InlineData("ch #", "ch three", false)]
    [InlineData(", but", ", but", true)]
    [InlineData("skip", "miss", true)]
    [InlineData("only? of?", "anything", true)]
    public void A_phrase_stands_where_its_words_do(string phrase, string text, bool stands) =>
        Assert.Equal(stands, new Phrase(phrase).Match(Lexer.Read(text, text.Length), 0) >= 0);

    [Fact]
    public void What_may_be_left_out_altogether_stands_at_the_end_too()
    {
        Token[] tokens = Lexer.Read("sc", 2);
        Assert.Equal(1, new Phrase("only? of?").Match(tokens, 1));
        Assert.Equal(-1, new Phrase("only of?").Match(tokens, 1));
    }

    /// <summary>Sixty marks and some hundred words: most share theirs with another, and are told apart all the same.</summary>
    [Fact]
    public void Words_that_share_a_mark_are_not_taken_for_each_other()
    {
        string[] words = ["work", "make", "skip", "turn", "join", "across", "around", "front", "back", "loop", "next", "last", "same", "each", "row", "rnd", "rep", "from", "with", "until", "mesh", "corner", "center", "between", "over", "under", "into", "made", "yarn", "hook", "post", "ring", "space", "piece", "motif", "square", "total", "again", "once", "twice", "left", "right", "wrong", "side", "edge", "color", "attach", "fasten", "draw", "pull", "insert", "through", "leaving", "keeping", "holding", "working", "ending", "finishing", "evenly", "along"];
        foreach (string word in words)
            foreach (string other in words)
                Assert.Equal(Usual(word) == Usual(other), new Phrase(Usual(word)).Match(Lexer.Read(other, other.Length), 0) >= 0);
    }

    private static string Usual(string word) => Craft.Terms.Synonyms.Usual(word);
}
