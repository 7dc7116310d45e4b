using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Tests;

public sealed class CautionsTests
{
    [Theory]
    [InlineData("Cradle Baby Blanket", "Ch 21.", new[] { CautionKind.Baby })]
    [InlineData("Dune Bonnet", "For newborns. Ties: ch 60.\nMake 2 ties.", new[] { CautionKind.Baby, CautionKind.Cords })]
    [InlineData("Hooded Poncho", "Sizes: child 4 (6, 8). Hood: ch 40.", new[] { CautionKind.Cords })]
    [InlineData("Otter", "A stuffed bear's friend. Use safety eyes.", new[] { CautionKind.Toy })]
    [InlineData("Harbour Hot Pad", "Ch 21.", new[] { CautionKind.Heat })]
    [InlineData("Galley potholder", "Ch 21.", new[] { CautionKind.Heat })]
    public void Words_of_title_and_text_tell_which_cautions_fit(string title, string text, CautionKind[] kinds) =>
        Assert.Equal(kinds, Cautions.For(title, text));

    [Theory]
    [InlineData("Tidewater Dishcloth", "Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)")]
    [InlineData("Lace Scarf", "Fingering or baby yarn, baby weight.")]
    [InlineData("Beanie", "Sizes: child (adult). Tie off. Tie a knot in the ends.")]
    [InlineData("Shawl", "Kid mohair, held double. Ties: ch 60.")]
    [InlineData("Market Bag", "Straps: ch 60. Ribbon to tie.")]
    [InlineData("Gull Point Beanie", "Fold the hat, hot pink yarn, toying with colours.")]
    public void Other_patterns_bring_none(string title, string text) => Assert.Empty(Cautions.For(title, text));
}
