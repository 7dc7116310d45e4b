using System.CommandLine;
using PatternStudio.Cli.Json;
using PatternStudio.Cli.Printing;
using PatternStudio.Craft.Checking;

namespace PatternStudio.Cli;

/// <summary><c>check FILE [--terms us|uk] [--json]</c>: works the pattern and tells every row's count and every finding.</summary>
internal static class CheckCommand
{
    public static Command Create(Terminal terminal)
    {
        var file = PatternFile.Argument();
        var terms = TermsOption.Create("--terms", "Whose terms the pattern uses; found from the text where not given.");
        var json = new Option<bool>("--json") { Description = "Write JSON instead of text." };
        var command = new Command("check", "Work a pattern and tell every row's count and what does not add up.") { file, terms, json };
        command.SetAction(call =>
        {
            PatternFile pattern = PatternFile.Read(call.GetValue(file), terminal);
            CheckedPattern found = PatternCheck.Check(pattern.Text, call.GetValue(terms));
            if (call.GetValue(json)) terminal.Output.WriteLine(CheckJson.Write(found));
            else CheckPrinter.Print(found, pattern.Name, terminal.Output);
            return found.HasErrors ? ExitCode.Errors : ExitCode.Fine;
        });
        return command;
    }
}
