using System.CommandLine;
using PatternStudio.Cli.Json;
using PatternStudio.Cli.Printing;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Cli;

/// <summary><c>schedule FILE --swatch … --yarn … [--size NAME] [--speed N] [--json | --csv]</c>: finished size and yarn, row by row.</summary>
internal static class ScheduleCommand
{
    public static Command Create(Terminal terminal)
    {
        var file = PatternFile.Argument();
        var swatch = MeasuringOptions.Swatch();
        var yarn = new Option<string?>("--yarn") { Description = "The ball band, such as \"200 m = 100 g\".", HelpName = "YARN" };
        var stated = MeasuringOptions.Stated();
        var speed = new Option<double?>("--speed") { Description = "Stitches that you work in a minute.", HelpName = "STITCHES" };
        var size = SizeOption.Create();
        var terms = TermsOption.Create("--terms", "Whose terms the pattern uses; found from the text where not given.");
        var json = new Option<bool>("--json") { Description = "Write JSON instead of text." };
        var csv = new Option<bool>("--csv") { Description = "Write CSV for a spreadsheet instead of text." };
        var command = new Command("schedule", "Finished size and yarn, row by row, from your swatch.") { file, swatch, yarn, stated, speed, size, terms, json, csv };
        command.SetAction(call =>
        {
            YarnLabel? label = MeasuringOptions.Read(call.GetValue(yarn), YarnLabel.Parse, "--yarn");
            CheckedPattern pattern = PatternCheck.Check(PatternFile.Read(call.GetValue(file), terminal).Text, call.GetValue(terms));
            MeasuringBasis basis = MeasuringOptions.Basis(pattern, call.GetValue(swatch), call.GetValue(stated), label);
            int index = SizeOption.Find(pattern, call.GetValue(size));
            Measured<RowSchedule> schedule = RowSchedule.Compute(pattern, basis with { StitchesPerMinute = Speed(call.GetValue(speed)) }, index);
            if (!schedule.IsKnown) throw new Refusal(schedule.Trace);
            if (call.GetValue(csv)) terminal.Output.Write(ScheduleCsv.Write(schedule.Value));
            else if (call.GetValue(json)) terminal.Output.WriteLine(ScheduleJson.Write(schedule.Value, pattern, index));
            else SchedulePrinter.Print(schedule, pattern, index, terminal.Output);
            return ExitCode.Fine;
        });
        return command;
    }

    private static double? Speed(double? speed) => speed is null or (> 0 and < 1000) ? speed : throw new Refusal("--speed: Give the stitches that you work in a minute, more than 0 and below 1000.");
}
