using System.Text.RegularExpressions;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>
/// What can come next in the line being written: places of the row below, stitches, repeats, the row's end with its count. A pure function of
/// the words up to the cursor.
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
        bool atPlace = AfterIn().Match(line) is { Success: true };
        if (!asked && isWhole && !atPlace) return [];
        return Proposals(above, line, atPlace)
            .Where(proposal => proposal.IsPlace == atPlace)
            .Select(proposal => proposal.After(line, asked)).OfType<Choice>()
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

    private static IEnumerable<Proposal> Proposals(RowsAbove above, string line, bool atPlace)
    {
        Match heading = Heading().Match(line);
        if (!heading.Success && above.Below is not null && line.Trim().Split(' ').Length <= 2) return [.. new RowProposals(above).Beginnings(), .. StitchProposals.Of(above)];
        RowSoFar? soFar = RowSoFar.Of(above, WholeSteps(line, heading.Length));
        if (atPlace) return new PlaceProposals(above).Of(soFar);
        IEnumerable<Proposal> steps = new RowProposals(above).Steps(line, soFar), stitches = StitchProposals.Of(above);
        return line.AsSpan(heading.Length).IsWhiteSpace() ? [.. stitches, .. steps] : [.. steps, .. stitches];
    }

    /// <summary>The line without the step that is still being written.</summary>
    private static string WholeSteps(string line, int headingLength)
    {
        int end = line.LastIndexOfAny([',', ';', '.', '*']);
        if (AfterIn().Match(line) is { Success: false } && line.Length > 0 && line[^1] is ' ' && end < line.Length - 2) end = line.Length;
        return end > headingLength ? line[..end] : "";
    }

    [GeneratedRegex(@"[\p{L}][\p{L}\d-]*$")]
    private static partial Regex LastWord();

    /// <summary>Words that everybody writes whole, and nobody wants gone on with.</summary>
    [GeneratedRegex("^(?:in|into|each|next|sts?|and|from|turn|the|to|sp|sps|of|first|last|same|rep|row|rnd|round|across|around)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex WholeWords();

    /// <summary>'Sc in', 'sk', with what is typed of the place after it.</summary>
    [GeneratedRegex(@"\b(?:in|into|skip|sk|miss|around)\s+(?:[\p{L}\d-]+\s?){0,3}$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex AfterIn();

    [GeneratedRegex(@"^\s*(?:(?:Row|Rnd|Round|Rows|Rnds|Rounds)\b[^:.]{0,40}[:.]|\d+(?:st|nd|rd|th) (?:row|rnd|round)\b[^:.]{0,20}[:.]?)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Heading();
}
