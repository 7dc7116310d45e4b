using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Tags;
using PatternStudio.Web.Features.Designs;

namespace PatternStudio.Web.Tests.Designs;

public sealed class ShelfAddressTests
{
    [Fact]
    public void As_usual_it_is_the_bare_page() => Assert.Equal("designs", new ShelfAddress().ToString());

    [Fact]
    public void Everything_that_the_list_shows_is_in_the_address_and_comes_back()
    {
        var all = new ShelfAddress { Search = "moss & \"back loop\"", State = DesignState.Testing, Tag = "für Baby", Findings = true, Order = DesignOrder.Title, Reverse = true, Page = 7, Dense = true };
        Assert.Equal(all, ShelfAddress.From("http://127.0.0.1/" + all));
    }

    [Theory]
    [InlineData("designs?state=nowhere&sort=weather&page=-3&view=round&findings=yes")]
    [InlineData("designs?state=9&page=99999999999")]
    [InlineData("designs?")]
    [InlineData("designs#top")]
    public void What_it_does_not_know_is_passed_over(string address) => Assert.Equal(new ShelfAddress(), ShelfAddress.From(address));

    [Fact]
    public void Latest_and_most_errors_come_first_unless_turned_round()
    {
        Assert.True(new ShelfAddress().ToQuery([]).Descending);
        Assert.False(new ShelfAddress { Order = DesignOrder.Title }.ToQuery([]).Descending);
        Assert.True(new ShelfAddress { Order = DesignOrder.Title, Reverse = true }.ToQuery([]).Descending);
    }

    [Fact]
    public void A_tag_is_found_in_any_case_and_one_that_is_gone_finds_nothing()
    {
        var tag = new KeptTag(Guid.NewGuid(), "Baby", 2);
        Assert.Equal(tag.Id, new ShelfAddress { Tag = "BABY" }.ToQuery([tag]).Tag);
        Assert.Equal(Guid.Empty, new ShelfAddress { Tag = "gone" }.ToQuery([tag]).Tag);
        Assert.Null(new ShelfAddress().ToQuery([tag]).Tag);
    }
}
