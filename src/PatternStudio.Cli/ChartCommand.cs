using System.CommandLine;
using System.CommandLine.Parsing;
using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Cli;

/// <summary><c>chart FILE -o OUT.svg|png|pdf [--style cyc|jis] [--left-handed] [--repeat] [--colour] [--size NAME]</c>, or <c>--schematic --swatch …</c>: draws the chart.</summary>
internal static class ChartCommand
{
    public static Command Create(Terminal terminal)
    {
        var file = PatternFile.Argument();
        var output = new Option<string?>("--output", "-o") { Description = "The SVG, PNG or PDF file to write, by its ending; - writes SVG to the output.", HelpName = "OUT.svg|png|pdf" };
        var style = new Option<SymbolStyle>("--style") { Description = "Whose symbols: cyc (Craft Yarn Council, the usual) or jis (JIS L 0201).", HelpName = "cyc|jis", CustomParser = Parse };
        var leftHanded = new Option<bool>("--left-handed") { Description = "Draw it as a left-hander works it." };
        var repeat = new Option<bool>("--repeat") { Description = "Draw the repeat and its edges alone, where something repeats." };
        var colour = new Option<bool>("--colour") { Description = "Draw stitches as patches of their colours, with letters, in place of symbols." };
        var schematic = new Option<bool>("--schematic") { Description = "Draw the outline with its finished measures instead; needs --swatch or --stated." };
        var swatch = MeasuringOptions.Swatch();
        var stated = MeasuringOptions.Stated();
        var size = SizeOption.Create();
        var terms = TermsOption.Create("--terms", "Whose terms the pattern uses; found from the text where not given.");
        var command = new Command("chart", "Draw the chart of a pattern with its key.") { file, output, style, leftHanded, repeat, colour, schematic, swatch, stated, size, terms };
        command.SetAction(call =>
        {
            ChartFile target = ChartFile.Of(call.GetValue(output));
            CheckedPattern pattern = PatternCheck.Check(PatternFile.Read(call.GetValue(file), terminal).Text, call.GetValue(terms));
            int index = SizeOption.Find(pattern, call.GetValue(size));
            Drawing drawing = call.GetValue(schematic)
                ? Outline(pattern, index, MeasuringOptions.Basis(pattern, call.GetValue(swatch), call.GetValue(stated), null))
                : Chart.Draw(pattern, index, new ChartStyle
                {
                    Symbols = call.GetValue(style),
                    LeftHanded = call.GetValue(leftHanded),
                    RepeatOnly = call.GetValue(repeat),
                    InColour = call.GetValue(colour),
                });
            target.Write(drawing, terminal);
            return ExitCode.Fine;
        });
        return command;
    }

    private static Drawing Outline(CheckedPattern pattern, int size, MeasuringBasis basis)
    {
        Measured<RowSchedule> schedule = RowSchedule.Compute(pattern, basis, size);
        if (!schedule.IsKnown) throw new Refusal(schedule.Trace);
        if (Schematic.Draw(schedule.Value) is { } drawing) return drawing;
        string[] reasons = [.. schedule.Value.Pieces.Select(piece => piece.Width.IsKnown ? piece.Height.Trace : piece.Width.Trace).Distinct()];
        throw new Refusal($"There is no schematic: {string.Join(' ', reasons)}");
    }

    private static SymbolStyle Parse(ArgumentResult argument)
    {
        string word = argument.Tokens[0].Value;
        if (Enum.TryParse(word, ignoreCase: true, out SymbolStyle style) && Enum.IsDefined(style) && !char.IsDigit(word[0])) return style;
        argument.AddError($"Styles are cyc or jis, not '{word}'");
        return default;
    }
}
