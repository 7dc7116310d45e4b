using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>What came of reading something a person typed: a value, or a sentence that says what is wrong, where, and what to do.</summary>
public sealed record Parsed<T>
    where T : notnull
{
    private readonly T? value;

    internal Parsed(T value) => (this.value, IsRead, Message) = (value, true, "");

    internal Parsed(string message, TextSpan span) => (IsRead, Message, Span) = (false, message, span);

    /// <summary>True where there is a value.</summary>
    public bool IsRead { get; }

    /// <summary>The value read. Ask <see cref="IsRead"/> first.</summary>
    /// <exception cref="InvalidOperationException">Nothing was read.</exception>
    public T Value => IsRead ? value! : throw new InvalidOperationException(Message);

    /// <summary>What is wrong and what to do about it; empty where a value was read.</summary>
    public string Message { get; }

    /// <summary>Where in the text it is wrong.</summary>
    public TextSpan Span { get; }
}

/// <summary>Makes <see cref="Parsed{T}"/>.</summary>
public static class Parsed
{
    /// <summary>A value that was read.</summary>
    public static Parsed<T> Read<T>(T value) where T : notnull => new(value);

    /// <summary>Words that could not be read.</summary>
    public static Parsed<T> Trouble<T>(string message, TextSpan span) where T : notnull => new(message, span);
}
