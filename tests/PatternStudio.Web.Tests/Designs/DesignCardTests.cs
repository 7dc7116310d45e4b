using Bunit;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Features.Designs;

namespace PatternStudio.Web.Tests.Designs;

public sealed class DesignCardTests : PageTest
{
    private static readonly DesignSummary Cloth = new(
        Guid.Parse("5f0b6c1e-0000-4000-8000-000000000001"), "Harbour cloth", DesignState.Writing, 3,
        Rows: 12, RowsChecked: 12, Errors: 0, Warnings: 0, WidthCm: 20.2, HeightCm: 21.9, Noon);

    [Fact]
    public void Tells_state_rows_size_and_day() =>
        Assert.Equal(
            "Harbour cloth Writing No findings Rows checked 12 of 12 Finished size 20 × 22 cm Updated today 12:00",
            Show(Cloth));

    [Fact]
    public void A_design_with_rows_that_were_not_checked_is_not_said_to_have_no_findings() =>
        Assert.DoesNotContain("No findings", Show(Cloth with { RowsChecked = 9 }));

    [Fact]
    public void A_size_that_is_not_known_is_said_to_be_so() =>
        Assert.Contains("Finished size not known yet", Show(Cloth with { WidthCm = null }));

    [Fact]
    public void Findings_are_counted_by_how_grave_they_are() =>
        Assert.Contains("1 error 2 warnings", Show(Cloth with { Errors = 1, Warnings = 2 }));

    private string Show(DesignSummary design) =>
        Render<DesignCard>(with => with.Add(card => card.Design, design)).Find("article").Reads();
}
