using PatternStudio.Craft.Text;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class ConvertedWordsTests
{
    [Fact]
    public void Changed_words_stand_apart_and_all_stretches_together_are_the_new_text()
    {
        // US 'sc' is UK 'dc' (Craft Yarn Council, stitch terms).
        IReadOnlyList<ConvertedWords> stretches = ConvertedWords.Of(
            "Row 1: sc in each ch.", [new TextEdit(new TextSpan(7, 2), "dc")]);

        Assert.Equal([new("Row 1: ", false), new("dc", true), new(" in each ch.", false)], stretches);
    }

    [Fact]
    public void Without_changes_there_is_one_stretch() =>
        Assert.Equal([new("Ch 20.", false)], ConvertedWords.Of("Ch 20.", []));
}
