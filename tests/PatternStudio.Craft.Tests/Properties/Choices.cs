using CsCheck;

namespace PatternStudio.Craft.Tests.Properties;

/// <summary>
/// Numbers drawn beforehand, from which a writer of patterns takes its choices one by one; when they are used up, every further choice is
/// the first. So fewer and smaller numbers mean a shorter and plainer pattern, and a failing one is made smaller by itself.
/// </summary>
internal sealed class Choices(int[] drawn)
{
    private int taken;

    /// <summary>Choices for one pattern.</summary>
    public static Gen<Choices> Gen { get; } = CsCheck.Gen.Int[0, 999_999].Array[5, 160].Select(drawn => new Choices(drawn));

    /// <summary>True once the drawn numbers are used up: the writer should come to an end.</summary>
    public bool AreUsedUp => taken >= drawn.Length;

    /// <summary>A number from <paramref name="least"/> to <paramref name="most"/>.</summary>
    public int Number(int least, int most) => least + (AreUsedUp ? 0 : drawn[taken++]) % (most - least + 1);

    /// <summary>True once in <paramref name="times"/>.</summary>
    public bool Once(int times) => Number(0, times - 1) == times - 1;

    /// <summary>One of several.</summary>
    public T Of<T>(params T[] several) => several[Number(0, several.Length - 1)];

    public override string ToString() => string.Join(',', drawn);
}
