using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Studio.Sample;

namespace PatternStudio.Studio.Tests;

public sealed class SampleTests
{
    [Fact]
    public async Task The_sample_brings_its_designs_each_with_yarn_and_chosen_swatch()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync("", sample: true);

        DesignPage page = await studio.Library.ListAsync(caller, new());

        Assert.Equal("Saltmarsh Stitches", await studio.Memberships.StudioNameAsync(caller));
        Assert.Equal(SampleDesign.All.Select(sample => sample.Title), page.Designs.Select(line => line.Title));
        foreach (DesignSummary line in page.Designs)
        {
            OpenDesign open = (await studio.Desk.OpenAsync(caller, line.Id))!;
            Assert.NotNull(open.Swatch?.WeightGrams);
            Assert.NotNull(open.Yarn);
            Assert.Contains(open.Title, open.Text, StringComparison.Ordinal);
            Assert.Contains(open.Yarn.Name, open.Text, StringComparison.Ordinal);
            Assert.Equivalent(DesignResults.Compute(open.Text, open.Swatch, open.Yarn), open.Results, strict: true);
        }
    }

    [Fact]
    public void Every_sample_is_right_and_tells_its_yarn() => Assert.All(SampleDesign.All, sample =>
    {
        Results results = Compute(sample);

        Assert.Equal(0, results.Errors);
        Assert.All(results.Sizes, size => Assert.Equal((size.Read.Rows, true), (size.Read.Checked, size.Read.Rows > 0)));
        Assert.All(results.Sizes, size => Assert.NotNull(size.Yarn));
    });

    /// <summary>The swatch and the pattern's statement of its size come from different hands; they may differ by a tenth.</summary>
    [Theory]
    [InlineData("Tidewater Dishcloth", 20, 20)]
    [InlineData("Kelp Bed Washcloth", 21, 21)]
    [InlineData("Harbour Light Coaster", 11, 11)]
    [InlineData("Pier Lights Granny Square", 14, 14)]
    [InlineData("Pebble Beach Square", 15, 15)]
    public void A_sample_measures_what_its_pattern_states(string title, double width, double height)
    {
        FinishedSize? size = Compute(SampleDesign.All.Single(sample => sample.Title == title)).Sizes[0].Size;

        Assert.NotNull(size);
        Assert.InRange(size.WidthCm, width * 0.9, width * 1.1);
        Assert.InRange(size.HeightCm, height * 0.9, height * 1.1);
    }

    private static Results Compute(SampleDesign sample) => DesignResults.Compute(sample.ReadText(), sample.Swatch, sample.Yarn);

    [Fact]
    public async Task The_sample_brings_its_yarns()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync("Dune", sample: true);

        IReadOnlyList<KeptYarn> yarns = await studio.Yarns.ListAsync(caller);

        Assert.Equal(SampleYarns.All.OrderBy(yarn => yarn.Name), yarns.Select(yarn => yarn.Details));
        Assert.Equal("Dune", await studio.Memberships.StudioNameAsync(caller));
    }
}
