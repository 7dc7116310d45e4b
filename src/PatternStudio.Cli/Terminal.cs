namespace PatternStudio.Cli;

/// <summary>Where a command reads and writes: the process's streams, or a test's.</summary>
/// <param name="Input">What <c>-</c> reads; bytes, for a pattern may come in any encoding.</param>
/// <param name="Output">Results, and nothing else.</param>
/// <param name="Error">One sentence when a command can't do its work.</param>
public sealed record Terminal(Stream Input, TextWriter Output, TextWriter Error);
