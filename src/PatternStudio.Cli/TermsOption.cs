using System.CommandLine;
using System.CommandLine.Parsing;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Cli;

/// <summary>'us' or 'uk', as an option.</summary>
internal static class TermsOption
{
    public static Option<Terminology?> Create(string name, string description) => new(name)
    {
        Description = description,
        HelpName = "us|uk",
        CustomParser = Parse,
    };

    public static string Name(Terminology terminology) => terminology == Terminology.Us ? "us" : "uk";

    private static Terminology? Parse(ArgumentResult argument)
    {
        string word = argument.Tokens[0].Value;
        switch (word.ToLowerInvariant())
        {
            case "us":
                return Terminology.Us;
            case "uk":
                return Terminology.Uk;
            default:
                argument.AddError($"Terms are us or uk, not '{word}'");
                return null;
        }
    }
}
