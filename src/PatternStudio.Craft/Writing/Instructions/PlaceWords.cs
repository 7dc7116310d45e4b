using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Writing.Instructions;

/// <summary>Writes where the hook goes: 'in next 3 sts', 'in each st across', 'over next 2 sts', 'in BLO of next sc'.</summary>
internal sealed class PlaceWords(StitchWords stitches)
{
    public string Of(Placement place)
    {
        string words = One(place);
        return place.And is { } more ? $"{words} and {Of(more)}" : words;
    }

    private string One(Placement place)
    {
        string? chosen = place.InRow is null && place.Further is null && Knows(place.Kind) && Knows(place.Within) ? Chosen(place) : null;
        if (chosen is null) return stitches.AsWritten(place.Span);
        string below = place.RowsBelow > 0 ? $" {place.RowsBelow + 1} rows below" : "";
        return Preposition(place) + chosen + below + Sweep(place);
    }

    private bool Knows(PlaceKind? kind) => kind?.Stitch is not { } stitch || stitches.Know(stitch);

    private static string Preposition(Placement place)
    {
        string around = place.Post switch { PostChoice.Front => "around front post of ", PostChoice.Back => "around back post of ", _ => "" };
        string loop = place.Loop switch { LoopChoice.Front => "in FLO of ", LoopChoice.Back => "in BLO of ", LoopChoice.Third => "in 3rd loop of ", _ => "" };
        if (around.Length + loop.Length > 0) return around + loop;
        return place.Choice is PlaceChoice.Over or PlaceChoice.Between ? "" : "in ";
    }

    /// <summary>The words after the preposition; null where the place has no usual wording and stays as it was written.</summary>
    private string? Chosen(Placement place) => place.Choice switch
    {
        PlaceChoice.Next => "next " + Counted(place.Count, place.Kind) + Within(place),
        PlaceChoice.Each when place.Count is { } count => $"each of next {NumberWords.Of(count)} {Several(place.Kind)}",
        PlaceChoice.Each when place.Within is null => "each " + Single(place.Kind),
        PlaceChoice.Same => "same " + Single(place.Kind),
        PlaceChoice.First => "first " + Counted(place.Count, place.Kind),
        PlaceChoice.Last => "last " + Counted(place.Count, place.Kind),
        PlaceChoice.Nth when place.Ordinal == -1 && place.Within is not null => "last " + Single(place.Kind) + Within(place),
        PlaceChoice.Nth when place.Ordinal is 1 && place.Within is not null => "first " + Single(place.Kind) + Within(place),
        PlaceChoice.Nth when place.Ordinal is > 1 and var ordinal => $"{NumberWords.Ordinal(ordinal)} {Single(place.Kind)}{Within(place)}",
        PlaceChoice.FromHook when place.Count is null => $"{NumberWords.Ordinal(place.Ordinal ?? 1)} {Single(place.Kind)} from hook",
        PlaceChoice.InRing => "ring",
        PlaceChoice.TurningChainTop when place.Within is { } chain && place.Ordinal is { } ordinal => $"{NumberWords.Ordinal(ordinal)} ch of {Single(chain)}",
        PlaceChoice.TurningChainTop when place.Within is null => "top of " + Single(place.Kind),
        PlaceChoice.TurningChainSpace => Single(place.Kind) + " sp",
        PlaceChoice.Over when place.Count is { } count => $"over next {NumberWords.Of(count)} {Several(place.Kind)}",
        PlaceChoice.Over when place.And is not null => "over next " + Single(place.Kind),
        PlaceChoice.Between when place is { Ordinal: null, Count: { } count } => $"between next {NumberWords.Of(count)} {Several(place.Kind)}",
        PlaceChoice.Centre => "center " + Single(place.Kind) + Within(place),
        PlaceChoice.Marked => "marked " + Single(place.Kind),
        _ => null,
    };

    private string Within(Placement place) => place.Within is { } within ? " of next " + Single(within) : "";

    private string Sweep(Placement place) =>
        place is { Choice: PlaceChoice.Each, Count: null, Extent: { } extent } ? " " + Of(extent) : "";

    /// <summary>'across', 'around to last 2 sts', '5 times'.</summary>
    public string Of(Extent extent) => extent.Kind switch
    {
        ExtentKind.Times => NumberWords.Times(extent.Count!),
        ExtentKind.ToEnd => extent.Around ? "around" : "across",
        ExtentKind.ToLast when extent.Around => "around " + Of(extent with { Around = false }),
        ExtentKind.ToLast => "to last " + (extent.Place is { } kind ? Counted(extent.Count, kind) : NumberWords.Of(extent.Count!)),
        ExtentKind.ToPlace => "to next " + Single(extent.Place!),
        _ => "",
    };

    public string Counted(SizedNumber? count, PlaceKind kind) =>
        NumberWords.IsOne(count) ? Single(kind) : $"{NumberWords.Of(count!)} {Several(kind)}";

    public string Single(PlaceKind kind) => kind.Noun switch
    {
        PlaceNoun.AnyStitch => "st",
        PlaceNoun.Stitch or PlaceNoun.Group => stitches.Of(kind.Stitch!.Value),
        PlaceNoun.Chain => "ch",
        PlaceNoun.ChainSpace => kind.Chains is { } chains ? $"ch-{chains} sp" : "ch sp",
        PlaceNoun.Space => "sp",
        PlaceNoun.Gap => "sp between sts",
        PlaceNoun.StitchOrSpace => "st and ch sp",
        PlaceNoun.StitchOrChain => "st and ch",
        PlaceNoun.TurningChain => kind.Chains is { } chains ? $"beg ch-{chains}" : "tch",
        PlaceNoun.RowEnd => "row end",
        PlaceNoun.Ring => "ring",
        _ => "corner",
    };

    public string Several(PlaceKind kind) => kind.Noun switch
    {
        PlaceNoun.Stitch or PlaceNoun.Group => stitches.Several(kind.Stitch!.Value),
        PlaceNoun.AnyStitch => "sts",
        PlaceNoun.Gap => "sps between sts",
        PlaceNoun.Chain => "chs",
        PlaceNoun.StitchOrSpace or PlaceNoun.StitchOrChain or PlaceNoun.Ring => Single(kind),
        _ => Single(kind) + "s",
    };
}
