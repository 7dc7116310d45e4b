using PatternStudio.Craft.Checking.Sentences;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>How the sentences name stitches: read aloud, 'an ess-cee', 'a dee-cee', 'an aitch-dee-cee' (common practice, no source).</summary>
public sealed class EnglishTests
{
    [Theory]
    [InlineData("sc", "an sc")]
    [InlineData("dc", "a dc")]
    [InlineData("hdc", "an hdc")]
    [InlineData("htr", "an htr")]
    [InlineData("tr", "a tr")]
    [InlineData("fpdc", "an fpdc")]
    [InlineData("FPdc", "an FPdc")]
    [InlineData("bpdc", "a bpdc")]
    [InlineData("sc2tog", "an sc2tog")]
    [InlineData("esc", "an esc")]
    [InlineData("st", "a st")]
    [InlineData("sl st", "a sl st")]
    [InlineData("sp", "a sp")]
    [InlineData("ch-2 sp", "a ch-2 sp")]
    [InlineData("inc", "an inc")]
    [InlineData("shell", "a shell")]
    [InlineData("puff", "a puff")]
    [InlineData("V-st", "a V-st")]
    public void The_article_follows_the_sound(string name, string said) => Assert.Equal(said, English.A(name));

    [Theory]
    [InlineData(1, "ch-2 sp", "1 ch-2 sp")]
    [InlineData(4, "ch-2 sp", "4 ch-2 sps")]
    [InlineData(12, "sc", "12 sc")]
    [InlineData(3, "st", "3 sts")]
    [InlineData(10, "puff", "10 puffs")]
    [InlineData(2, "dc3tog", "2 dc3tog")]
    [InlineData(5, "V-st", "5 V-sts")]
    public void Abbreviated_stitches_have_no_plural_and_words_do(int number, string name, string said) => Assert.Equal(said, English.Count(number, name));
}
