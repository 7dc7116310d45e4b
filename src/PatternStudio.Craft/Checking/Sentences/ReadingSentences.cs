using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using static PatternStudio.Craft.Checking.Sentences.English;

namespace PatternStudio.Craft.Checking.Sentences;

/// <summary>What the reading says of words: not read, out of place, of the other terms.</summary>
internal static class ReadingSentences
{
    public const string NothingToCheck =
        "There are no rows here yet. Begin with a chain or a ring, such as 'Ch 21.', and write a row under it, such as 'Row 1: Sc in 2nd ch from hook and in each ch across. (20 sc)'.";

    /// <summary>The code of a trouble.</summary>
    public static string CodeOf(ReadingTroubleKind kind) => kind switch
    {
        ReadingTroubleKind.SizeListLength => FindingCodes.SizeListLength,
        ReadingTroubleKind.RepeatWithoutStar => FindingCodes.RepeatWithoutStar,
        ReadingTroubleKind.StarWithoutRepeat => FindingCodes.StarWithoutRepeat,
        ReadingTroubleKind.BracketOpen => FindingCodes.BracketOpen,
        ReadingTroubleKind.OtherTerminology => FindingCodes.OtherTerms,
        ReadingTroubleKind.NotText => FindingCodes.NotText,
        ReadingTroubleKind.TooLarge => FindingCodes.TooLarge,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Every trouble has a code."),
    };

    /// <summary>The sentence of a trouble.</summary>
    /// <param name="trouble">What is wrong.</param>
    /// <param name="words">The words at fault.</param>
    /// <param name="row">The row they stand in, as headed; empty outside rows.</param>
    /// <param name="sizes">How many sizes the pattern has.</param>
    public static string Of(ReadingTrouble trouble, string words, string row, int sizes) => trouble.Kind switch
    {
        ReadingTroubleKind.SizeListLength => $"{Quoted(words)} gives {Count(NumbersIn(trouble, words), "number", "numbers")}, but the pattern has {sizes} sizes. Give one number for each size.",
        ReadingTroubleKind.RepeatWithoutStar => $"{Quoted(words)} repeats from a mark that does not stand before it{In(row)}. Put the mark where the repeat begins.",
        ReadingTroubleKind.StarWithoutRepeat => $"Nothing{In(row)} repeats from this {words.Trim()}. Say how far it is repeated, or take the mark out.",
        ReadingTroubleKind.BracketOpen => $"This bracket has no partner{In(row)}. Close it, or take it out.",
        ReadingTroubleKind.OtherTerminology => trouble.Detail,
        ReadingTroubleKind.NotText => "This is no text: it holds bytes that no writing has. Save the pattern as plain text and open that.",
        _ => TooLarge(trouble, words),
    };

    public static string Unread(string words, string row, string? nearest) =>
        $"{Quoted(words)} could not be read, so {(row.Length > 0 ? row : "this line")} is not checked."
        + (nearest is null ? " Say it in other words, or count the row by hand." : $" A wording that can be read is: {nearest}.");

    public static string UnreadLine(string words) => $"{Quoted(words)} could not be read as a row, so it is not checked. Begin a row with its number, such as 'Row 2:'.";

    /// <summary>A term of the other terminology among the rows.</summary>
    /// <param name="word">As written.</param>
    /// <param name="own">The pattern's terms: 'US' or 'UK'.</param>
    /// <param name="other">The other ones.</param>
    /// <param name="meant">The stitch's name in the pattern's own terms.</param>
    public static string OtherTerms(string word, string own, string other, string meant) =>
        $"'{word}' is a {other} term, but the pattern is in {own} terms. What {other} terms call {A(word)} is {A(meant)} in {own} terms: use one terminology throughout.";

    /// <summary>A stated terminology that the words of the rows contradict.</summary>
    public static string StatedTermsContradicted(string word, string stated, string other) =>
        $"The pattern says that it is in {stated} terms, but '{word}' is a {other} term and no row has a term of {stated} alone. State {other} terms, or convert the rows.";

    private static string TooLarge(ReadingTrouble trouble, string words) => trouble.Detail switch
    {
        "nesting" => $"The brackets here are more than {ReadingLimits.Nesting} deep, more than anyone could follow. Write the row with fewer brackets inside each other.",
        "characters" => $"The text is longer than {ReadingLimits.Characters:N0} characters; what follows here is not read. Split it into several patterns.",
        _ => $"{Quoted(words)} is larger than any pattern needs. Check the number.",
    };

    private static int NumbersIn(ReadingTrouble trouble, string words) =>
        int.TryParse(trouble.Detail, out int told) ? told : words.Split(',', '(').Length;

    private static string In(string row) => row.Length > 0 ? $" in {row}" : "";
}
