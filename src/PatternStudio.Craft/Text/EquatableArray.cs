using System.Collections;
using System.Runtime.CompilerServices;

namespace PatternStudio.Craft.Text;

/// <summary>
/// An immutable list that is equal to another when its items are: records that hold lists then compare by what they say.
/// </summary>
[CollectionBuilder(typeof(EquatableArray), nameof(EquatableArray.Create))]
public readonly struct EquatableArray<T>(T[]? items) : IReadOnlyList<T>, IEquatable<EquatableArray<T>>
{
    private readonly T[]? items = items;

    /// <summary>Number of items.</summary>
    public int Count => items?.Length ?? 0;

    /// <summary>True where there are none.</summary>
    public bool IsEmpty => Count == 0;

    /// <summary>The item at a 0-based index.</summary>
    public T this[int index] => items is null ? throw new ArgumentOutOfRangeException(nameof(index)) : items[index];

    /// <summary>What two lists share where one is a copy of the other's handle: equal identities need no comparing. Null where empty.</summary>
    public object? Identity => items;

    /// <summary>The items without copying.</summary>
    public ReadOnlySpan<T> Span => items;

    /// <inheritdoc/>
    public bool Equals(EquatableArray<T> other) => Span.SequenceEqual(other.Span);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is EquatableArray<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (T item in Span) hash.Add(item);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)(items ?? [])).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    public static bool operator ==(EquatableArray<T> left, EquatableArray<T> right) => left.Equals(right);

    public static bool operator !=(EquatableArray<T> left, EquatableArray<T> right) => !left.Equals(right);
}

/// <summary>Makes <see cref="EquatableArray{T}"/> from collection expressions and sequences.</summary>
public static class EquatableArray
{
    /// <summary>A list of the given items.</summary>
    public static EquatableArray<T> Create<T>(ReadOnlySpan<T> items) => new(items.ToArray());

    /// <summary>A list of the items of a sequence.</summary>
    public static EquatableArray<T> ToEquatableArray<T>(this IEnumerable<T> items) => new([.. items]);
}
