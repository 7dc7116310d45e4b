using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>A pattern of which no more than the beginning is written has a chart as well.</summary>
public sealed class BeginningTests
{
    [Theory]
    [InlineData("Magic ring.")]
    [InlineData("Magic ring.\nRnd 1: Foo bar.")]
    [InlineData("Ch 1.")]
    [InlineData("Ch 4, join to form a ring.")]
    [InlineData("Ch 12.")]
    [InlineData("A\nMagic ring.\n\nB\nRnd 1: 6 sc in MR. (6)\nRnd 2: 2 sc in each st. (12)")]
    public void What_is_begun_is_drawn_in_its_place(string text)
    {
        Drawing drawing = Chart.Draw(PatternCheck.Check("US terms\n" + text));
        Assert.NotEmpty(drawing.Rows);
        Assert.All(new[] { drawing.Bounds.Left, drawing.Bounds.Top, drawing.Bounds.Width, drawing.Bounds.Height }, length => Assert.InRange(length, -100, 100));
        Assert.True(drawing.Bounds is { Width: > 1, Height: > 1 });
    }
}
