namespace PatternStudio.Cli;

/// <summary>A call that can't be answered, with the sentence that says why. Thrown inside a command, caught in one place.</summary>
internal sealed class Refusal(string sentence) : Exception(sentence);
