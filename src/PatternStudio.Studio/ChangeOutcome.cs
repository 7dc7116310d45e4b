namespace PatternStudio.Studio;

/// <summary>How a correction went: done, refused with the reasons, or overtaken by somebody else's correction, which is shown and not overwritten.</summary>
/// <param name="Messages">Why it was refused; empty where it was not.</param>
/// <param name="Theirs">What somebody else kept meanwhile; null where nobody did. Give it back as 'before' to keep yours in its place.</param>
public sealed record ChangeOutcome<T>(IReadOnlyList<FieldMessage> Messages, T? Theirs)
    where T : class
{
    /// <summary>True where it was done.</summary>
    public bool Succeeded => Messages.Count == 0 && Theirs is null;

    /// <summary>Done, or refused.</summary>
    public static implicit operator ChangeOutcome<T>(Outcome outcome) => new(outcome.Messages, null);

    /// <summary>The reasons in one paragraph, for a notice on the screen.</summary>
    public override string ToString() => string.Join(' ', Messages.Select(message => message.Message));
}

/// <summary>Makes <see cref="ChangeOutcome{T}"/>.</summary>
public static class ChangeOutcome
{
    /// <summary>Overtaken: nothing was written.</summary>
    public static ChangeOutcome<T> Overtaken<T>(T theirs) where T : class => new([], theirs);
}
