using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Terms;

/// <summary>Stitches that follow from the plain ones by a rule of naming: post, extended and foundation stitches, 'n together', clusters.</summary>
internal static class StitchFamilies
{
    private const int MostTogether = 20;

    /// <summary>The plain stitches that families are formed of.</summary>
    private static readonly string[] Plain = ["sc", "hdc", "dc", "tr", "dtr", "trtr"];

    /// <summary>Every family stitch that has a name of its own (clusters of n are found by <see cref="Cluster"/>).</summary>
    public static IEnumerable<StitchTerm> All(IReadOnlyDictionary<StitchId, StitchTerm> plain)
    {
        foreach (StitchTerm stitch in Plain.Select(id => plain[new StitchId(id)]))
        {
            yield return Post(stitch, "fp", "front");
            yield return Post(stitch, "bp", "back");
            yield return Formed(stitch, "e", ["e", "extended "], ["ex", "extended "], 0.5);
            yield return Formed(stitch, "f", ["f", "foundation "], ["f", "foundation "], 0);
            yield return Formed(stitch, "l", ["linked "], ["linked "], 0);
            yield return Formed(stitch, "st-", ["standing ", "chainless starting ", "chainless beginning ", "stacked "], ["standing ", "chainless starting ", "chainless beginning ", "stacked "], 0);
            for (int n = 2; n <= MostTogether; n++)
            {
                yield return Together(stitch, n);
                if (n <= 6) yield return Together(Post(stitch, "fp", "front"), n);
                if (n <= 6) yield return Together(Post(stitch, "bp", "back"), n);
            }
        }
    }

    /// <summary>The id of a cluster of n open stitches in one place: 'dc3cl' for '3-dc cluster'.</summary>
    public static StitchId ClusterId(int legs, StitchId of) => new($"{of.Value}{legs}cl");

    /// <summary>The term of a cluster id; null for other ids.</summary>
    public static StitchTerm? Cluster(StitchId id, IReadOnlyDictionary<StitchId, StitchTerm> plain)
    {
        if (!id.Value.EndsWith("cl", StringComparison.Ordinal)) return null;
        string stem = id.Value[..^2];
        string stitch = stem.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        if (stitch.Length == stem.Length || stem.Length - stitch.Length > 3 || !plain.TryGetValue(new StitchId(stitch), out StitchTerm? of)) return null;
        string legs = stem[stitch.Length..];
        return of with
        {
            Id = id,
            Us = [$"{legs}-{of.Us[0]} cl", $"{legs}-{of.Us[1]} cluster"],
            Uk = [$"{legs}-{of.Uk[0]} cl", $"{legs}-{of.Uk[1]} cluster"],
            Motions = "",
            Base = of.Id,
        };
    }

    private static StitchTerm Post(StitchTerm stitch, string prefix, string side) => stitch with
    {
        Id = new StitchId(prefix + stitch.Id),
        Us = PostNames(stitch.Us, prefix, side).ToEquatableArray(),
        Uk = [.. PostNames(stitch.Uk, prefix, side), $"raised {stitch.Uk[1]} {side}", $"R{stitch.Uk[0]}{char.ToUpperInvariant(side[0])}", $"{stitch.Uk[0]}/r{side[0]}"],
        Motions = stitch.Motions.Replace("in st", $"from {side} around post of st", StringComparison.Ordinal),
        Base = stitch.Id,
        Post = side,
    };

    private static IEnumerable<string> PostNames(EquatableArray<string> names, string prefix, string side) =>
        [prefix.ToUpperInvariant() + names[0], $"{side} post {names[1]}", $"{prefix} {names[0]}", $"{side} post {names[0]}"];

    private static StitchTerm Formed(StitchTerm stitch, string prefix, string[] us, string[] uk, double higher) => stitch with
    {
        Id = new StitchId(prefix + stitch.Id),
        Us = Prefixed(us, stitch.Us).ToEquatableArray(),
        Uk = Prefixed(uk, stitch.Uk).ToEquatableArray(),
        Motions = "",
        HeightInChains = stitch.HeightInChains + higher,
        Base = stitch.Id,
    };

    private static IEnumerable<string> Prefixed(string[] prefixes, EquatableArray<string> names) =>
        [prefixes[0] + names[0], .. prefixes.Skip(prefixes.Length > 1 ? 1 : 0).SelectMany(prefix => new[] { prefix + names[1], prefix + names[0] })];

    private static StitchTerm Together(StitchTerm stitch, int n) => stitch with
    {
        Id = new StitchId($"{stitch.Id}{n}tog"),
        Us = TogetherNames(stitch.Us, n).ToEquatableArray(),
        Uk = TogetherNames(stitch.Uk, n).ToEquatableArray(),
        Motions = "",
        Takes = n,
        Base = stitch.Base,
    };

    private static IEnumerable<string> TogetherNames(EquatableArray<string> names, int n) =>
    [
        $"{names[0]}{n}tog", $"{names[1]} {n} together", $"{names[0]} {n} together", $"{names[1]} {n} stitches together",
        $"{names[0]} {n} stitches together", $"{names[0]}{n} together", $"{n} {names[0]} together", $"{n} {names[1]} together", $"{names[0]}{n} tog",
    ];
}
