using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Tests.Reading;

public sealed class UnreadTests
{
    [Theory]
    [InlineData("Sc in next st, flumox in nxet st, dc in next st.", "sc next st; UNREAD<flumox in nxet st>; dc next st", "next")]
    [InlineData("Sc in next st, sikp 2, dc in next st.", "sc next st; UNREAD<sikp 2>; dc next st", "skip")]
    public void What_cannot_be_read_is_kept_and_reading_goes_on(string row, string steps, string near)
    {
        RowInstruction read = Reader.Row(row);
        Assert.Equal(steps, string.Join("; ", read.Steps.Select(step => step is UnreadStep unread ? $"UNREAD<{unread.Text}>" : TreeText.Of(step))));
        Assert.Contains(near, read.Steps.OfType<UnreadStep>().Single().Nearest!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_typing_mistake_is_never_taken_for_a_remark() =>
        Assert.Contains(Reader.Row("Ch 1, trun, sc in next st.").Steps, step => step is UnreadStep { Text: "trun" });

    [Theory]
    [InlineData("Row 1: (Sc in next st, ch 1.", ReadingTroubleKind.BracketOpen)]
    [InlineData("Row 1: Ch 999999999.", ReadingTroubleKind.TooLarge)]
    [InlineData("Row 1: \0\0\u0001\u0002", ReadingTroubleKind.NotText)]
    public void Troubles_of_the_text_are_reported(string text, ReadingTroubleKind kind) =>
        Assert.Contains(PatternReader.Read(text).Troubles, trouble => trouble.Kind == kind);
}
