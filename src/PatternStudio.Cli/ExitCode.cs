namespace PatternStudio.Cli;

/// <summary>What a command says by its exit code.</summary>
public static class ExitCode
{
    /// <summary>The pattern has no errors, or the command did its work.</summary>
    public const int Fine = 0;

    /// <summary>The pattern has errors; they are in the output.</summary>
    public const int Errors = 1;

    /// <summary>The file can't be read or the call is wrong; a sentence says what.</summary>
    public const int Unusable = 2;
}
