using PatternStudio.Studio.Accounts;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Tests.Shell;

public sealed class MannerTests
{
    private static readonly DateOnly Day = new(2026, 11, 5);

    [Theory]
    [InlineData(DateForm.DayMonth, "5 Nov 2026", "5 Nov")]
    [InlineData(DateForm.MonthDay, "Nov 5, 2026", "Nov 5")]
    [InlineData(DateForm.Dotted, "5.11.2026", "5.11.")]
    [InlineData(DateForm.YearFirst, "2026-11-05", "2026-11-05")]
    public void Says_a_day_in_her_form(DateForm form, string whole, string withoutYear)
    {
        Assert.Equal(whole, Manner.Day(Day, form));
        Assert.Equal(withoutYear, Manner.Day(Day, form, withYear: false));
    }

    [Fact]
    public void Says_sizes_in_her_unit_with_the_other_beside_it()
    {
        Manner.Take(new Preferences { Lengths = LengthUnit.Inches, Decimals = DecimalSign.Comma });

        Assert.Equal("7¾ × 7¾\u00a0in", Numbers.Sides(20, 19.5));
        Assert.Equal("20 × 19,5\u00a0cm", Numbers.OtherSides(20, 19.5));
        Assert.Equal("4 × 3,5\u00a0in", Numbers.Taken(10.16, 8.89));
        Assert.Equal("7,5", Numbers.Amount(7.5));
    }

    [Fact]
    public async Task What_one_reader_likes_is_nothing_to_another()
    {
        await Task.Run(() => Manner.Take(new Preferences { Lengths = LengthUnit.Inches }), TestContext.Current.CancellationToken);

        Assert.Equal("20 × 19.5\u00a0cm", Numbers.Sides(20, 19.5));
    }
}
