using PatternStudio.Craft.Working;
using static PatternStudio.Craft.Checking.Sentences.English;

namespace PatternStudio.Craft.Checking.Sentences;

/// <summary>What goes wrong while rows are worked, said for a maker: which row, what is wrong, what to do.</summary>
internal static class WorkSentences
{
    /// <summary>The code of a mishap.</summary>
    public static string CodeOf(MishapKind kind) => kind switch
    {
        MishapKind.CountDiffers => FindingCodes.CountDiffers,
        MishapKind.PastTheEnd => FindingCodes.PastTheEnd,
        MishapKind.LeftOver => FindingCodes.StitchesLeft,
        MishapKind.RepeatUneven => FindingCodes.RepeatUneven,
        MishapKind.OtherKind => FindingCodes.OtherStitch,
        MishapKind.NoSuchPlace => FindingCodes.NoSuchPlace,
        MishapKind.TurningChainDisagrees => FindingCodes.TurningChainDisagrees,
        MishapKind.JoinToNothing => FindingCodes.JoinToNothing,
        MishapKind.NoSuchRow => FindingCodes.NoSuchRow,
        MishapKind.RowNumberRepeated => FindingCodes.RowNumberRepeated,
        MishapKind.RowNumberMissing => FindingCodes.RowNumberMissing,
        MishapKind.NoFoundation => FindingCodes.NoFoundation,
        MishapKind.TooLarge => FindingCodes.TooLarge,
        MishapKind.CannotWork => FindingCodes.NotWorked,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Every mishap has a code."),
    };

    /// <summary>The sentence of a mishap.</summary>
    /// <param name="mishap">What went wrong.</param>
    /// <param name="offered">What the row below offers instead, where a place is named that it does not have: '4 ch-2 sps'; else empty.</param>
    public static string Of(Mishap mishap, string offered = "") => mishap.Kind switch
    {
        MishapKind.CountDiffers => CountDiffers(mishap),
        MishapKind.PastTheEnd => PastTheEnd(mishap),
        MishapKind.LeftOver => LeftOver(mishap),
        MishapKind.RepeatUneven => RepeatUneven(mishap),
        MishapKind.OtherKind => $"{AtHead(mishap.Row)} works into the next {mishap.Named} here, but {A(mishap.Met)} comes first. Name that, or skip it in so many words.",
        MishapKind.NoSuchPlace => NoSuchPlace(mishap, offered),
        MishapKind.TurningChainDisagrees =>
            $"{AtHead(mishap.Row)} works into the top of the turning chain, but the ch {mishap.Wanted} that begins {Row(mishap.Met)} does not count as a stitch. Say that it counts, or end in the last stitch.",
        MishapKind.JoinToNothing when mishap.Wanted > 0 => $"{AtHead(mishap.Row)} is joined to chain {mishap.Wanted} of its beginning chain, but that has {English.Count(mishap.Found, "chain")} only. Begin with more chains, or join to another.",
        MishapKind.JoinToNothing => $"{AtHead(mishap.Row)} is joined to its first {mishap.Named}, but it has no {mishap.Named}. Join it to its own first stitch.",
        MishapKind.NoSuchRow => NoSuchRow(mishap),
        MishapKind.RowNumberRepeated => $"The number {mishap.Found} has been used already; the next free number is {mishap.Wanted}. Give every row a number of its own.",
        MishapKind.RowNumberMissing => RowNumberMissing(mishap),
        MishapKind.NoFoundation => $"{AtHead(mishap.Row)} works into a row below, but there is nothing below it. Begin with a chain, a ring or foundation stitches.",
        MishapKind.TooLarge when mishap.Wanted > 0 => $"More than {English.Count(mishap.Wanted, "row")} are asked for here. The rows beyond them are not worked. Check the numbers here.",
        MishapKind.TooLarge => $"{AtHead(mishap.Row)} asks for more stitches than can be worked. Check the numbers here.",
        MishapKind.CannotWork => $"{AtHead(mishap.Row)} is read, but what it asks for here can't be followed stitch by stitch: the row is not checked. Count it by hand.",
        _ => throw new ArgumentOutOfRangeException(nameof(mishap), mishap.Kind, "Every mishap has a sentence."),
    };

    private static string CountDiffers(Mishap mishap)
    {
        string told = $"{AtHead(mishap.Row)} states {Count(mishap.Wanted, mishap.Named)}, but working it gives {mishap.Found}.";
        return mishap.NextRowAgreesWithWorked
            ? $"{told} The row after it fits {mishap.Found}, so the stated number is likely the slip."
            : $"{told} Correct the number, or the row.";
    }

    private static string PastTheEnd(Mishap mishap) => mishap switch
    {
        { Named: "ch", Wanted: > 0, Met: "" } => $"{AtHead(mishap.Row)} counts {Count(mishap.Wanted, "ch")} back from the hook, but only {Count(mishap.Found, "was", "were")} made there.",
        { Named: "ch", Wanted: > 0 } when mishap.Wanted > mishap.Found =>
            $"{AtHead(mishap.Row)} asks for chain number {mishap.Wanted}, but {Row(mishap.Met)} has {(mishap.Found == 0 ? "no chs" : $"only {Count(mishap.Found, "ch")}")} there. Make more chains, or count fewer.",
        { Found: 0 } => $"{AtHead(mishap.Row)} runs out here: all of {Row(mishap.Met)} is worked already. Work fewer stitches, or check the row below.",
        _ => $"{AtHead(mishap.Row)} runs out here: {Row(mishap.Met)} has {Count(mishap.Found, mishap.Named)} in all, and this needs more. Work fewer here, or check the row below.",
    };

    private static string LeftOver(Mishap mishap) => mishap.Found == 1
        ? $"{AtHead(mishap.Row)} leaves 1 stitch of {Row(mishap.Met)} unworked. Work into it, or say that it is left unworked."
        : $"{AtHead(mishap.Row)} leaves {mishap.Found} stitches of {Row(mishap.Met)} unworked. Work into them, or say that they are left unworked.";

    private static string RepeatUneven(Mishap mishap) => mishap.Wanted == 0
        ? $"The repeat of {Row(mishap.Row)} does not come out even: after its last whole turn {Count(mishap.Found, "stitch is", "stitches are")} left of {Row(mishap.Met)}, too few for one turn more. Say how the row ends, or check the count of {Row(mishap.Met)}."
        : $"The repeat of {Row(mishap.Row)} does not come out even: it leaves {Stitches(mishap.Found)} of {Row(mishap.Met)}, and what follows it needs {mishap.Wanted}. Change the end of the row, or check the count of {Row(mishap.Met)}.";

    private static string NoSuchPlace(Mishap mishap, string offered)
    {
        string told = $"{AtHead(mishap.Row)} asks for {A(mishap.Named)}, but {Row(mishap.Met)} has none.";
        return offered.Length > 0 ? $"{told} What it has: {offered}." : $"{told} Name a place that is there.";
    }

    private static string NoSuchRow(Mishap mishap) => mishap.Named.Length == 0
        ? $"{AtHead(mishap.Row)} repeats a row, but no row has been worked before it. Write that row out first."
        : $"Row {mishap.Named} is named here, but no row before this one has that number. Name one that has been worked.";

    private static string RowNumberMissing(Mishap mishap)
    {
        long last = mishap.Found - 1;
        return last == mishap.Wanted
            ? $"Number {last} is missing: the numbers go from {last - 1} to {mishap.Found} here. Add that row, or renumber."
            : $"Numbers {mishap.Wanted} to {last} are missing: the numbers go from {mishap.Wanted - 1} to {mishap.Found} here. Add those rows, or renumber.";
    }
}
