namespace PatternStudio.Studio;

/// <summary>What is wrong with one field of a form, in a sentence that stands alone.</summary>
/// <param name="Field">The name of the field as the operation's parameter or record calls it; empty where it concerns the whole.</param>
/// <param name="Message">What is wrong and what to do.</param>
public sealed record FieldMessage(string Field, string Message);

/// <summary>How an operation went: done, or refused with the reasons.</summary>
public sealed record Outcome(IReadOnlyList<FieldMessage> Messages)
{
    /// <summary>Done, nothing to say.</summary>
    public static Outcome Done { get; } = new([]);

    /// <summary>True where it was done.</summary>
    public bool Succeeded => Messages.Count == 0;

    /// <summary>Refused for reasons.</summary>
    public static Outcome Refused(IReadOnlyList<FieldMessage> messages) => new(messages);

    /// <summary>Refused for one reason.</summary>
    public static Outcome Refused(string field, string message) => new([new FieldMessage(field, message)]);

    /// <summary>Refused for one reason.</summary>
    public static Outcome Refused(FieldMessage reason) => new([reason]);

    /// <summary>The reasons in one paragraph, for a notice on the screen.</summary>
    public override string ToString() => string.Join(' ', Messages.Select(message => message.Message));
}

/// <summary>How an operation went, and what it gave.</summary>
/// <param name="Value">What it gave; the type's default where refused.</param>
public sealed record Outcome<T>(T? Value, IReadOnlyList<FieldMessage> Messages)
{
    /// <summary>True where it was done.</summary>
    public bool Succeeded => Messages.Count == 0;

    /// <summary>Done, with its value.</summary>
    public static implicit operator Outcome<T>(T value) => new(value, []);

    /// <summary>Refused.</summary>
    public static implicit operator Outcome<T>(Outcome refused) => new(default, refused.Messages);

    /// <summary>The reasons in one paragraph, for a notice on the screen.</summary>
    public override string ToString() => string.Join(' ', Messages.Select(message => message.Message));
}
