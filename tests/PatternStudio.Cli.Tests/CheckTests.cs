using System.Text.Json;

namespace PatternStudio.Cli.Tests;

public sealed class CheckTests
{
    [Fact]
    public void A_right_pattern_ends_with_0_and_its_table()
    {
        Call call = Call.Reading(Samples.Scarf, "check", "-");
        Assert.Equal(
            """
            Read in US terms, as the pattern states.

              Row    Stitches  Stated  Of these
              Row 1        20  20 sts  20 sc
              Row 2        20  20 sts  20 sc
            2 rows: 2 read, 2 checked.

            Nothing to correct was found.

            """,
            call.Output);
        Assert.Equal((ExitCode.Fine, ""), (call.ExitCode, call.Error));
    }

    [Fact]
    public void A_wrong_count_ends_with_1_and_is_shown_where_it_stands()
    {
        Call call = Call.Reading(Samples.WrongScarf, "check", "-");
        Assert.Equal(ExitCode.Errors, call.ExitCode);
        Assert.Contains("  Row 2        20  21 sts, differs  20 sc\n", call.Output, StringComparison.Ordinal);
        Assert.Contains("standard input:4:", call.Output, StringComparison.Ordinal);
        Assert.Contains("    4 | Row 2: Ch 1, turn, sc in each st across. (21 sts)\n", call.Output, StringComparison.Ordinal);
        Assert.EndsWith("1 error.\n", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_count_is_told_in_JSON_too()
    {
        Call call = Call.Reading(Samples.WrongScarf, "check", "-", "--json");
        JsonElement json = JsonDocument.Parse(call.Output).RootElement;
        Assert.Equal(ExitCode.Errors, call.ExitCode);
        JsonElement row = json.GetProperty("rows")[1];
        Assert.Equal((20, 21, false), (row.GetProperty("stitches").GetInt32(), row.GetProperty("stated").GetInt32(), row.GetProperty("countAgrees").GetBoolean()));
        JsonElement finding = Assert.Single(json.GetProperty("findings").EnumerateArray());
        Assert.Equal(("count-differs", "error", 4), (finding.GetProperty("code").GetString(), finding.GetProperty("severity").GetString(), finding.GetProperty("line").GetInt32()));
    }

    [Fact]
    public void Every_size_is_worked()
    {
        JsonElement json = JsonDocument.Parse(Call.Reading(Samples.TwoSizes, "check", "-", "--json").Output).RootElement;
        Assert.Equal(["Small", "Large"], json.GetProperty("sizes").EnumerateArray().Select(size => size.GetProperty("name").GetString()));
        Assert.Equal([20, 30], json.GetProperty("sizes").EnumerateArray().Select(size => size.GetProperty("rows")[1].GetProperty("stitches").GetInt32()));
    }

    [Fact]
    public void The_terms_can_be_told()
    {
        Call call = Call.Reading("Ch 21.\nRow 1: Dc in 2nd ch from hook and in each ch across. (20 sts)\n", "check", "-", "--terms", "UK", "--json");
        JsonElement json = JsonDocument.Parse(call.Output).RootElement;
        Assert.Equal("uk", json.GetProperty("terms").GetString());
        Assert.Equal(20, json.GetProperty("rows")[0].GetProperty("counts").GetProperty("sc").GetInt32());
    }

    [Theory]
    [InlineData("straight-rows-dishcloth.txt")]
    [InlineData("granny-square-uk.txt")]
    public void The_samples_are_right(string file) => Assert.Equal(ExitCode.Fine, Call.With("check", Samples.File(file)).ExitCode);

    [Theory]
    [InlineData(new byte[] { 0xEF, 0xBB, 0xBF })]
    [InlineData(new byte[0])]
    public void A_byte_order_mark_is_no_part_of_the_pattern(byte[] mark)
    {
        Call call = Call.Piping([.. mark, .. System.Text.Encoding.UTF8.GetBytes(Samples.Scarf)], "check", "-");
        Assert.StartsWith("Read in US terms, as the pattern states.", call.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Fine, call.ExitCode);
    }

    [Fact]
    public void An_old_file_in_the_Windows_alphabet_is_read()
    {
        byte[] old = [.. System.Text.Encoding.ASCII.GetBytes("Draw up a "), 0xBD, .. System.Text.Encoding.ASCII.GetBytes(" inch loop.\n")];
        Assert.Contains("½", Call.Piping(old, "convert", "-", "--to", "uk").Output, StringComparison.Ordinal);
    }
}
