using System.CommandLine;
using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using PatternStudio.Publishing;

namespace PatternStudio.Cli;

/// <summary><c>chart FILE -o OUT.svg [--size NAME]</c>: draws the chart.</summary>
internal static class ChartCommand
{
    public static Command Create(Terminal terminal)
    {
        var file = PatternFile.Argument();
        var output = new Option<string?>("--output", "-o") { Description = "The SVG file to write; - writes to the output.", HelpName = "OUT.svg" };
        var size = SizeOption.Create();
        var terms = TermsOption.Create("--terms", "Whose terms the pattern uses; found from the text where not given.");
        var command = new Command("chart", "Draw the chart of a pattern with its key.") { file, output, size, terms };
        command.SetAction(call =>
        {
            string path = call.GetValue(output) is { Length: > 0 } given ? given : throw new Refusal("Name the file to write: chart FILE -o OUT.svg.");
            CheckedPattern pattern = PatternCheck.Check(PatternFile.Read(call.GetValue(file), terminal).Text, call.GetValue(terms));
            Write(path, SvgPainter.Paint(Chart.Draw(pattern, SizeOption.Find(pattern, call.GetValue(size)))), terminal);
            return ExitCode.Fine;
        });
        return command;
    }

    private static void Write(string path, string svg, Terminal terminal)
    {
        if (path == "-")
        {
            terminal.Output.WriteLine(svg);
            return;
        }

        try
        {
            File.WriteAllText(path, svg);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new Refusal($"'{path}' can't be written: {problem.Message}");
        }
    }
}
