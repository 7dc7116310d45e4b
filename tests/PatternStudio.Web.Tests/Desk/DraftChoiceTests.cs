using PatternStudio.Studio.Designs;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class DraftChoiceTests
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);
    private static readonly Guid One = new("11111111-0000-4000-8000-000000000000");
    private static readonly Guid Two = new("22222222-0000-4000-8000-000000000000");

    [Fact]
    public void Nothing_unsaved_is_nothing_to_go_on_with()
    {
        Assert.Null(DraftChoice.Of([], [], "Ch 21."));
        Assert.Null(DraftChoice.Of([Draft(One, "Ch 21.", 0)], [], "Ch 21."));
    }

    [Fact]
    public void The_latest_words_are_gone_on_with_and_the_others_are_not_lost()
    {
        DraftChoice choice = DraftChoice.Of([Draft(One, "Ch 31.", 1)], [Draft(Two, "Ch 41.", 5, "phone")], "Ch 21.")!;

        Assert.Equal("Ch 41.", choice.TakenUp.Text);
        Assert.Equal(["Ch 31."], choice.Others.Select(draft => draft.Text));
    }

    /// <summary>The studio keeps the words a second after it has heard of them: the browser's, though older by the clock, may have a letter more.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(1)]
    public void What_browser_and_studio_have_of_one_desk_is_one_draft_and_the_browser_has_its_last_letter(int minutes)
    {
        DraftChoice choice = DraftChoice.Of([Draft(One, "Ch 31. Turn", minutes)], [Draft(One, "Ch 31.", 2, "computer")], "Ch 21.")!;

        Assert.Equal("Ch 31. Turn", choice.TakenUp.Text);
        Assert.Empty(choice.Others);
    }

    private static DraftWords Draft(Guid writer, string text, int minutes, string place = "") => new(writer, text, 1, Noon.AddMinutes(minutes), place);
}
