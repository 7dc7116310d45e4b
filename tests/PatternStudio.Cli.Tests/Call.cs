using System.Text;

namespace PatternStudio.Cli.Tests;

/// <summary>One call of the command line, in this process, through its real parser.</summary>
internal sealed record Call(int ExitCode, string Output, string Error)
{
    /// <summary>Calls with the words given; nothing is piped in.</summary>
    public static Call With(params string[] words) => Piping([], words);

    /// <summary>Calls with a pattern piped in.</summary>
    public static Call Reading(string pattern, params string[] words) => Piping(Encoding.UTF8.GetBytes(pattern), words);

    public static Call Piping(byte[] input, params string[] words)
    {
        var output = new StringWriter { NewLine = "\n" };
        var error = new StringWriter { NewLine = "\n" };
        using var piped = new MemoryStream(input);
        int exitCode = StudioCli.Run(words, new Terminal(piped, output, error));
        return new Call(exitCode, output.ToString(), error.ToString());
    }
}
