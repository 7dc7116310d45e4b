using Bunit;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Features.Designs;

namespace PatternStudio.Web.Tests.Designs;

public sealed class DesignCardTests : PageTest
{
    private static readonly DesignSummary Cloth = new(
        Guid.Parse("5f0b6c1e-0000-4000-8000-000000000001"), "Harbour cloth", DesignState.Writing, 3,
        Rows: 12, RowsChecked: 12, Errors: 0, Warnings: 0, WidthCm: 20.2, HeightCm: 21.9, Noon)
    {
        HasSwatch = true,
    };

    [Fact]
    public void Tells_state_findings_what_it_waits_for_size_and_day() =>
        Assert.Equal("Pick Harbour cloth Harbour cloth Writing No findings Ready for testers 20 × 22 cm Changed today 12:00", Show(Cloth));

    [Fact]
    public void A_design_with_rows_that_were_not_checked_is_not_said_to_have_no_findings()
    {
        Assert.DoesNotContain("No findings", Show(Cloth with { RowsChecked = 9 }));
        Assert.Contains("Waits for you: something to look at", Show(Cloth with { RowsChecked = 9 }));
    }

    [Fact]
    public void A_size_that_is_not_known_is_said_to_be_so() => Assert.Contains("size not known yet", Show(Cloth with { WidthCm = null }));

    [Fact]
    public void Sizes_are_named_before_the_measures() => Assert.Contains("S, M, L · 20 × 22 cm", Show(Cloth with { Sizes = "S, M, L" }));

    [Fact]
    public void Findings_are_counted_by_how_grave_they_are() =>
        Assert.Contains("1 error 2 warnings 1 note Waits for you: errors to mend", Show(Cloth with { Errors = 1, Warnings = 2, Notes = 1 }));

    [Fact]
    public void Tags_lead_to_the_designs_that_bear_them() =>
        Assert.Equal("designs?tag=spring%20book", Render<DesignCard>(with => with.Add(card => card.Design, Cloth with { Tags = ["spring book"] })).Find("a.tag").GetAttribute("href"));

    [Fact]
    public void A_photo_is_shown_in_place_of_the_chart()
    {
        Assert.Equal("designs/5f0b6c1e-0000-4000-8000-000000000001/chart?version=3", Picture(Cloth));
        Assert.Equal($"photos/{Guid.Empty}?small=true", Picture(Cloth with { PhotoId = Guid.Empty }));
    }

    [Fact]
    public void Picking_it_is_told()
    {
        bool? told = null;
        Render<DesignCard>(with => with.Add(card => card.Design, Cloth).Add(card => card.SelectedChanged, picked => told = picked)).Find("input").Change(true);
        Assert.True(told);
    }

    private string? Picture(DesignSummary design) => Render<DesignCard>(with => with.Add(card => card.Design, design)).Find("img").GetAttribute("src");

    private string Show(DesignSummary design) =>
        Render<DesignCard>(with => with.Add(card => card.Design, design)).Find("article").Reads();
}
