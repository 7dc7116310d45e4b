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
    public async Task The_sample_brings_its_yarns()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync("Dune", sample: true);

        IReadOnlyList<KeptYarn> yarns = await studio.Yarns.ListAsync(caller);

        Assert.Equal(SampleYarns.All.OrderBy(yarn => yarn.Name), yarns.Select(yarn => yarn.Details));
        Assert.Equal("Dune", await studio.Memberships.StudioNameAsync(caller));
    }
}
