using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// What a pattern takes for granted. Patterns seldom say all of it, so it is told where the text tells it, and else found:
/// the pattern is worked with the usual conventions, and another is taken only where the pattern comes out better with it.
/// </summary>
/// <param name="TurningChains">Whether a turning chain of n counts as a stitch, for each n that the text leaves open.</param>
/// <param name="ChainsAreStitches">True where 'st' includes single chains and totals count them ('21 sts' of sc, ch 1).</param>
/// <param name="TurningChainsAreSpaces">True where 'ch-3 sp' also means the space under a turning chain of three (tiles worked from corner to corner).</param>
public sealed record Conventions(EquatableArray<TurningChainRule> TurningChains, bool ChainsAreStitches, bool TurningChainsAreSpaces)
{
    /// <summary>Nothing found yet: the trade's usual rules hold.</summary>
    public static readonly Conventions Usual = new([], false, false);

    /// <summary>The rule for a turning chain of n, where one was found.</summary>
    public bool? Counts(int chains)
    {
        foreach (TurningChainRule rule in TurningChains)
            if (rule.Chains == chains) return rule.Counts;
        return null;
    }

    /// <summary>The same with the rule for a turning chain of n set.</summary>
    public Conventions With(int chains, bool counts) =>
        this with { TurningChains = TurningChains.Where(rule => rule.Chains != chains).Append(new(chains, counts)).ToEquatableArray() };
}

/// <summary>Whether a turning chain of n counts as a stitch.</summary>
public readonly record struct TurningChainRule(int Chains, bool Counts);
