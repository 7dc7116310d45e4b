using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Terms;

/// <summary>One stitch of the vocabulary file: its names in each terminology and its hook motions in words.</summary>
/// <param name="Id">Its key, whatever the terminology.</param>
/// <param name="Us">US names, the usual abbreviation first, the full name second, then other spellings.</param>
/// <param name="Uk">UK names, in the same order.</param>
/// <param name="Motions">The hook motions, in the words a special-stitch definition would use; empty for chains.</param>
/// <param name="HeightInChains">Height in chains, as ../reference tables give it: sc 1, hdc 2, dc 3.</param>
/// <param name="Makes">How many stitches of a count it makes: 1 for nearly all, 2 for 'inc'.</param>
/// <param name="Takes">How many places it takes: 2 for 'sc2tog', else 1.</param>
/// <param name="Base">The plain stitch it is a form of ('sc' for 'sc2tog', 'dc' for 'fpdc'); itself for plain ones.</param>
public sealed record StitchTerm(
    StitchId Id,
    EquatableArray<string> Us,
    EquatableArray<string> Uk,
    string Motions,
    double HeightInChains,
    int Makes,
    int Takes,
    StitchId Base)
{
    /// <summary>'front' or 'back' for post stitches.</summary>
    public string? Post { get; init; }

    /// <summary>True where the name stands for several stitches in one place: 'shell', 'V-stitch'.</summary>
    public bool IsGroup { get; init; }

    /// <summary>The names in a terminology.</summary>
    public EquatableArray<string> Names(Terminology terminology) => terminology == Terminology.Us ? Us : Uk;

    /// <summary>How a row abbreviates it: 'sc' in the USA, 'dc' in the United Kingdom.</summary>
    public string Abbreviation(Terminology terminology) => Names(terminology)[0];
}
