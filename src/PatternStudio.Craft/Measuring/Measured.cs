namespace PatternStudio.Craft.Measuring;

/// <summary>
/// A number (or a table of them) with its trace, or the reason why it is not known. Nothing in this folder gives a number of which
/// it can't say where it comes from.
/// </summary>
public sealed record Measured<T>
    where T : notnull
{
    private readonly T? value;

    internal Measured(T value, string trace) => (this.value, IsKnown, Trace) = (value, true, trace);

    internal Measured(string reason) => Trace = reason;

    /// <summary>True where there is a value.</summary>
    public bool IsKnown { get; }

    /// <summary>The value. Ask <see cref="IsKnown"/> first.</summary>
    /// <exception cref="InvalidOperationException">It is not known.</exception>
    public T Value => IsKnown ? value! : throw new InvalidOperationException(Trace);

    /// <summary>How the value was found — which swatch, which row, which rule — or why there is none.</summary>
    public string Trace { get; }

    /// <summary>A value found from this one, by the same trace; or not known for the same reason.</summary>
    public Measured<TResult> Then<TResult>(Func<T, TResult> find) where TResult : notnull =>
        IsKnown ? new(find(Value), Trace) : new(Trace);

    /// <summary>The value as text, or 'not known'.</summary>
    public override string ToString() => IsKnown ? Value.ToString()! : "not known";
}

/// <summary>Makes <see cref="Measured{T}"/>.</summary>
public static class Measured
{
    /// <summary>A value and how it was found.</summary>
    public static Measured<T> Known<T>(T value, string trace) where T : notnull => new(value, trace);

    /// <summary>No value, and why.</summary>
    public static Measured<T> NotKnown<T>(string reason) where T : notnull => new(reason);
}
