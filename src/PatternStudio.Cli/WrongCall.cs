using System.CommandLine;

namespace PatternStudio.Cli;

/// <summary>Says in one sentence what is wrong with a call.</summary>
internal static class WrongCall
{
    /// <summary>The sentence; null where nothing is wrong.</summary>
    public static string? Sentence(ParseResult call)
    {
        if (call.Errors.Count == 0) return null;
        string command = call.CommandResult.Command is RootCommand ? "" : call.CommandResult.Command.Name;
        string help = $"'{(command.Length > 0 ? command + " " : "")}--help' shows how.";
        if (call.UnmatchedTokens.Count > 0 && !MistypedOption(call)) return Unknown(call.UnmatchedTokens[0], command) + " " + help;
        if (command.Length == 0) return $"Say what to do with the pattern; {help}";
        return OneLine(call.Errors[^1].Message) + " " + help;
    }

    /// <summary>An option that does not exist is taken for the file; then the file is one word too many, which is not the fault.</summary>
    private static bool MistypedOption(ParseResult call) => call.Errors.Any(error => error.Message.StartsWith("There is no option", StringComparison.Ordinal));

    private static string Unknown(string word, string command)
    {
        if (command.Length == 0) return $"There is no command '{word}';";
        return word.StartsWith('-') ? $"'{command}' has no option '{word}';" : $"'{command}' takes one file, and '{word}' is one word too many;";
    }

    private static string OneLine(string message) => message.ReplaceLineEndings(" ").TrimEnd('.', ' ') + ";";
}
