using System.CommandLine;

namespace PatternStudio.Cli;

/// <summary>The command line: the engine for text files. Every command reads a pattern's file, or what is piped in for <c>-</c>.</summary>
public static class StudioCli
{
    /// <summary>Runs one call.</summary>
    /// <returns>An <see cref="ExitCode"/>.</returns>
    public static int Run(IReadOnlyList<string> arguments, Terminal terminal)
    {
        ArgumentNullException.ThrowIfNull(arguments);
        ArgumentNullException.ThrowIfNull(terminal);
        // A file may be called '@home.txt': no word of a call is replaced by a file's content.
        ParseResult call = Commands(terminal).Parse(arguments, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (WrongCall.Sentence(call) is { } sentence) return Refuse(terminal, sentence);
        try
        {
            return call.Invoke(new InvocationConfiguration { Output = terminal.Output, Error = terminal.Error, EnableDefaultExceptionHandler = false });
        }
        catch (Refusal refusal)
        {
            return Refuse(terminal, refusal.Message);
        }
    }

    private static RootCommand Commands(Terminal terminal) => new("Reads written crochet patterns, works them stitch by stitch and tells what does not add up.")
    {
        CheckCommand.Create(terminal),
        ScheduleCommand.Create(terminal),
        ChartCommand.Create(terminal),
        ConvertCommand.Create(terminal),
    };

    private static int Refuse(Terminal terminal, string sentence)
    {
        terminal.Error.WriteLine(sentence);
        return ExitCode.Unusable;
    }
}
