using System.Text.RegularExpressions;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>
/// What can come next in the line being written: places of the row below, stitches, repeats, the row's end with its count. A pure function of
/// the words up to the cursor. In a pattern of several sizes nothing is proposed but what is right in all of them.
/// </summary>
public static partial class WhatComesNext
{
    private const int Most = 10;

    /// <summary>The likeliest first; empty where nothing is worth proposing.</summary>
    /// <param name="above">The lines above.</param>
    /// <param name="line">The line up to the cursor.</param>
    /// <param name="asked">True where the writer asked by key; else only what goes on with a word of two letters or more, and no word that is whole already.</param>
    public static EquatableArray<Choice> At(RowsAbove above, string line, bool asked)
    {
        ArgumentNullException.ThrowIfNull(above);
        ArgumentNullException.ThrowIfNull(line);
        string word = LastWord().Match(line).Value;
        if (!asked && word.Length < 2) return [];
        bool isWhole = word.Length > 0 && (Vocabulary.Standard.Meaning(word, above.Terms) is not null || WholeWords().IsMatch(word));
        LineSpot cursor = LineSpot.Of(line, name => IsStitch(above, name));
        if (!asked && isWhole && cursor.Spot != Spot.Place) return [];
        return Proposals(above, line, cursor)
            .Select(proposal => (proposal.Holds, Choice: proposal.After(line, cursor, asked)))
            .Where(found => found.Choice is not null && found.Holds())
            .Select(found => found.Choice!)
            .DistinctBy(choice => choice.Words).Take(Most).ToEquatableArray();
    }

    /// <summary>What can come next at a place of a text: the same with the lines above read here and now.</summary>
    /// <param name="cursor">0-based offset.</param>
    public static EquatableArray<Choice> At(string text, int cursor, bool asked)
    {
        ArgumentNullException.ThrowIfNull(text);
        int lineStart = cursor == 0 ? 0 : text.LastIndexOf('\n', cursor - 1) + 1;
        return At(RowsAbove.Of(text[..lineStart]), text[lineStart..cursor], asked);
    }

    private static IEnumerable<Proposal> Proposals(RowsAbove above, string line, LineSpot cursor)
    {
        var trials = new Trials(above);
        if (!LineSpot.HasHeading(line) && above.Below is not null && line.Trim().Split(' ').Length <= 2)
            return [.. new RowProposals(above, trials).Beginnings(), .. StitchProposals.Of(above)];
        RowSoFar? soFar = RowSoFar.Of(trials, cursor.Begun);
        if (cursor.Spot == Spot.Place) return new PlaceProposals(above, trials).Of(soFar, line[..cursor.From], line[cursor.From..]);
        IEnumerable<Proposal> steps = new RowProposals(above, trials).Steps(line, cursor, soFar), stitches = StitchProposals.Of(above);
        return cursor.Begun.Length == 0 && cursor.Spot == Spot.Step ? [.. stitches, .. steps] : [.. steps, .. stitches];
    }

    /// <summary>Chains are worked in no place, and a slip stitch is two words.</summary>
    private static bool IsStitch(RowsAbove above, string name) =>
        Vocabulary.Standard.Meaning(name, above.Terms) is { } stitch && stitch != StitchId.Chain
        || above.Pattern.Definitions.Any(own => own.Names.Any(own => own.Equals(name, StringComparison.OrdinalIgnoreCase)));

    [GeneratedRegex(@"[\p{L}][\p{L}\d-]*$")]
    private static partial Regex LastWord();

    /// <summary>Words that everybody writes whole, and nobody wants gone on with.</summary>
    [GeneratedRegex("^(?:in|into|each|next|sts?|and|from|turn|the|to|sp|sps|of|first|last|same|rep|row|rnd|round|across|around)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex WholeWords();
}
