using System.CommandLine;
using PatternStudio.Cli.Json;
using PatternStudio.Cli.Printing;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Cli;

/// <summary><c>schedule FILE --swatch … --yarn … [--size NAME] [--json]</c>: finished size and yarn, row by row.</summary>
internal static class ScheduleCommand
{
    public static Command Create(Terminal terminal)
    {
        var file = PatternFile.Argument();
        var swatch = new Option<string?>("--swatch") { Description = "Your swatch, such as \"16 sts, 18 rows = 10 x 10 cm, 12 g\".", HelpName = "SWATCH" };
        var yarn = new Option<string?>("--yarn") { Description = "The ball band, such as \"200 m = 100 g\".", HelpName = "YARN" };
        var size = SizeOption.Create();
        var terms = TermsOption.Create("--terms", "Whose terms the pattern uses; found from the text where not given.");
        var json = new Option<bool>("--json") { Description = "Write JSON instead of text." };
        var command = new Command("schedule", "Finished size and yarn, row by row, from your swatch.") { file, swatch, yarn, size, terms, json };
        command.SetAction(call =>
        {
            YarnLabel? label = Read(call.GetValue(yarn), YarnLabel.Parse, "--yarn");
            CheckedPattern pattern = PatternCheck.Check(PatternFile.Read(call.GetValue(file), terminal).Text, call.GetValue(terms));
            Swatch? measured = Read(call.GetValue(swatch), words => Swatch.Parse(words, pattern.Pattern.Terms.Terminology), "--swatch");
            int index = SizeOption.Find(pattern, call.GetValue(size));
            Measured<RowSchedule> schedule = RowSchedule.Compute(pattern, measured, label, index);
            if (!schedule.IsKnown) throw new Refusal(schedule.Trace);
            if (call.GetValue(json)) terminal.Output.WriteLine(ScheduleJson.Write(schedule.Value, pattern, index));
            else SchedulePrinter.Print(schedule, pattern, index, terminal.Output);
            return ExitCode.Fine;
        });
        return command;
    }

    private static T? Read<T>(string? words, Func<string, Parsed<T>> parse, string option)
        where T : class
    {
        if (words is null) return null;
        Parsed<T> parsed = parse(words);
        return parsed.IsRead ? parsed.Value : throw new Refusal($"{option}: {parsed.Message}");
    }
}
