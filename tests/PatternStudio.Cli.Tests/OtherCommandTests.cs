using System.Text.Json;

namespace PatternStudio.Cli.Tests;

public sealed class OtherCommandTests
{
    private const string Swatch = "16 sc, 18 rows = 10 x 10 cm, 12 g";
    private const string Yarn = "200 m = 100 g";

    /// <summary>20 stitches at 16 to 10 cm are 12.5 cm; 2 rows at 18 to 10 cm are 1.1 cm.</summary>
    [Fact]
    public void A_schedule_tells_size_and_yarn_row_by_row()
    {
        Call call = Call.Reading(Samples.Scarf, "schedule", "-", "--swatch", Swatch, "--yarn", Yarn, "--json");
        Assert.Equal((ExitCode.Fine, ""), (call.ExitCode, call.Error));
        JsonElement json = JsonDocument.Parse(call.Output).RootElement;
        Assert.Equal((12.5, 1.1), (json.GetProperty("widthCm").GetDouble(), json.GetProperty("heightCm").GetDouble()));
        JsonElement last = json.GetProperty("rows").EnumerateArray().Last();
        Assert.Equal((2, 20), (last.GetProperty("number").GetInt32(), last.GetProperty("stitches").GetInt32()));
        Assert.Equal(json.GetProperty("yarnM").GetDouble(), last.GetProperty("totalM").GetDouble());
        Assert.Equal(1, json.GetProperty("balls").GetInt32());
        Assert.True(json.GetProperty("buyM").GetDouble() > json.GetProperty("yarnM").GetDouble());
    }

    [Fact]
    public void What_a_schedule_does_not_know_is_null_and_says_why()
    {
        JsonElement json = JsonDocument.Parse(Call.Reading(Samples.Scarf, "schedule", "-", "--json").Output).RootElement;
        Assert.Equal(JsonValueKind.Null, json.GetProperty("widthCm").ValueKind);
        Assert.Equal(JsonValueKind.Null, json.GetProperty("yarnM").ValueKind);
        Assert.NotEmpty(json.GetProperty("notKnown").EnumerateArray());
    }

    [Fact]
    public void A_schedule_in_words_has_a_line_for_each_row()
    {
        string output = Call.Reading(Samples.Scarf, "schedule", "-", "--swatch", Swatch, "--yarn", Yarn).Output;
        Assert.Contains("Finished size 12.5 cm (5 in) wide", output, StringComparison.Ordinal);
        Assert.Contains("  Row 2 ", output, StringComparison.Ordinal);
    }

    /// <summary>41 stitches and chains at 20 a minute: 21 chains of the foundation and 2 rows of 20.</summary>
    [Fact]
    public void A_schedule_in_words_tells_time_margin_and_questions()
    {
        string output = Call.Reading(Samples.Scarf, "schedule", "-", "--swatch", "16 sc, 1 rows = 10 x 100 cm, 12 g", "--swatch", Swatch, "--yarn", Yarn, "--speed", "20").Output;
        Assert.Contains("Working time: 3 min.", output, StringComparison.Ordinal);
        Assert.Contains("? A row would be 160 stitch widths high", output, StringComparison.Ordinal);
        Assert.Contains("Student's t", output, StringComparison.Ordinal);
        Assert.Contains("Half of the yarn is used.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_schedule_is_written_as_csv()
    {
        Call call = Call.Reading(Samples.Scarf, "schedule", "-", "--swatch", Swatch, "--yarn", Yarn, "--csv");
        Assert.Equal(ExitCode.Fine, call.ExitCode);
        Assert.StartsWith("Piece,Section,Row,Side,Instruction,Stitches", call.Output, StringComparison.Ordinal);
        Assert.Equal(5, call.Output.Split("\r\n").Length);
    }

    /// <summary>20 stitches at 20 to 10 cm are 10 cm; the gauge counts no rows.</summary>
    [Fact]
    public void The_stated_gauge_serves_where_there_is_no_swatch()
    {
        string output = Call.Reading("Gauge: 20 sc = 10 cm (4 in).\n\n" + Samples.Scarf, "schedule", "-", "--stated").Output;
        Assert.Contains("Finished width 10 cm (4 in).", output, StringComparison.Ordinal);
        Assert.Contains("gauge as the pattern states it", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("-5")]
    public void A_speed_is_above_nothing(string speed) => Assert.StartsWith("--speed: ", Call.Reading(Samples.Scarf, "schedule", "-", "--speed", speed).Error, StringComparison.Ordinal);

    [Theory]
    [InlineData("--swatch", "sixteen", "--swatch: ")]
    [InlineData("--yarn", "soft", "--yarn: ")]
    public void A_measure_that_can_not_be_read_says_what_to_write(string option, string words, string begins)
    {
        Call call = Call.Reading(Samples.Scarf, "schedule", "-", option, words);
        Assert.Equal((ExitCode.Unusable, ""), (call.ExitCode, call.Output));
        Assert.StartsWith(begins, call.Error, StringComparison.Ordinal);
        Assert.Single(call.Error.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData("large", ExitCode.Fine, "")]
    [InlineData("XL", ExitCode.Unusable, "The pattern has no size 'XL'; it has Small, Large.\n")]
    public void A_size_is_chosen_by_its_name(string size, int exitCode, string error)
    {
        Call call = Call.Reading(Samples.TwoSizes, "schedule", "-", "--size", size, "--swatch", Swatch);
        Assert.Equal((exitCode, error), (call.ExitCode, call.Error));
    }

    [Fact]
    public void A_pattern_without_sizes_has_none_to_choose()
    {
        Call call = Call.Reading(Samples.Scarf, "schedule", "-", "--size", "XL");
        Assert.Equal((ExitCode.Unusable, "The pattern has one size only, without a name; leave out --size XL.\n"), (call.ExitCode, call.Error));
    }

    [Fact]
    public void Converting_changes_the_words_that_name_stitches()
    {
        Call call = Call.Reading(Samples.Scarf, "convert", "-", "--to", "uk");
        Assert.Equal(ExitCode.Fine, call.ExitCode);
        Assert.Equal(
            """
            UK terms
            Ch 21.
            Row 1: Dc in 2nd ch from hook and in each ch across. (20 sts)
            Row 2: Ch 1, turn, dc in each st across. (20 sts)

            """,
            call.Output);
    }

    [Fact]
    public void Converting_needs_to_know_to_what() =>
        Assert.Equal("Say which terms to write: convert FILE --to uk, or --to us.\n", Call.Reading(Samples.Scarf, "convert", "-").Error);
}
