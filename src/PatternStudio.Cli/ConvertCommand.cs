using System.CommandLine;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Writing;

namespace PatternStudio.Cli;

/// <summary><c>convert FILE --to uk|us</c>: the pattern in the other terms, written to the output.</summary>
internal static class ConvertCommand
{
    public static Command Create(Terminal terminal)
    {
        var file = PatternFile.Argument();
        var to = TermsOption.Create("--to", "The terms to write.");
        var from = TermsOption.Create("--terms", "Whose terms the pattern uses; found from the text where not given.");
        var command = new Command("convert", "Write a pattern in UK or US terms; words that are no stitches stay as they are.") { file, to, from };
        command.SetAction(call =>
        {
            Terminology wanted = call.GetValue(to) ?? throw new Refusal("Say which terms to write: convert FILE --to uk, or --to us.");
            string text = PatternFile.Read(call.GetValue(file), terminal).Text;
            terminal.Output.Write(TermsConverter.Convert(PatternReader.Read(text, call.GetValue(from)), wanted));
            return ExitCode.Fine;
        });
        return command;
    }
}
