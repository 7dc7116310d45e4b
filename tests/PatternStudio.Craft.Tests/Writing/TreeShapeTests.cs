using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Writing;

namespace PatternStudio.Craft.Tests.Writing;

public sealed class TreeShapeTests
{
    [Theory]
    [InlineData("Row 1: Sc in next 3 sts.", "Row 1:   sc in next 3 stitches")]
    [InlineData("Row 1: Sk 1 st, [sc, ch 1] 3 times.", "Row 1: Skip 1 st, [sc, ch 1] three times.")]
    public void The_same_work_in_other_words_has_the_same_shape(string left, string right) =>
        Assert.Null(TreeShape.FirstDifference(PatternReader.Read(left), PatternReader.Read(right)));

    [Theory]
    [InlineData("Row 1: Sc in next 3 sts.", "Row 1: Sc in next 4 sts.", "line 29: '3', not '4'")]
    [InlineData("Row 1: Sc in next st.", "Row 1: Dc in next st.", "Stitch: sc', not 'Stitch: dc'")]
    [InlineData("Row 1: Sc in next st.", "Row 1: Sc in next st. (20 sts)", "not 'Stated: StatedCount'")]
    public void Other_work_has_another(string left, string right, string difference)
    {
        string? found = TreeShape.FirstDifference(PatternReader.Read(left), PatternReader.Read(right));
        Assert.Contains(difference.Split("'")[1], found, StringComparison.Ordinal);
    }
}
