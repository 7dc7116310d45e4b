namespace PatternStudio.Studio.Materials;

/// <summary>Why an operation on the cupboard is refused, in sentences.</summary>
internal static class StashRefusals
{
    public static readonly FieldMessage NoLot =
        new("", "This lot is not in your cupboard, or it was removed. Look at the list of yarns again.");

    public static readonly FieldMessage NoYarnOfLot =
        new(nameof(LotDetails.YarnId), "This yarn is not in your studio. Choose one from the list.");

    public static readonly FieldMessage WeightOfBallNotKnown =
        new("Grams", "The label of this yarn does not say what a ball weighs, so nobody can tell what is free. Add the weight of a ball to the yarn first.");

    /// <summary>What is wrong with a lot; empty where nothing is.</summary>
    public static FieldMessage[] OfLot(LotDetails lot) =>
    [
        .. BallFaults(lot),
        .. MaterialRefusals.Range(nameof(lot.OpenedGrams), "The weight of begun balls", lot.OpenedGrams, 0, 10_000, " g"),
        .. Wording.ShortFaults(nameof(lot.DyeLot), "The dye lot", lot.DyeLot, StashLot.NameLength),
        .. Wording.ShortFaults(nameof(lot.Place), "The place", lot.Place, StashLot.NameLength),
        .. Wording.ShortFaults(nameof(lot.Note), "The note", lot.Note, StashLot.NoteLength),
    ];

    public static FieldMessage NotFree(double free) => new("Grams", free > 0
        ? $"Only {free:0.#} g of this lot are free. Set aside that much or less, or free some at another design first."
        : "Nothing of this lot is free: other designs have set it aside. Free some there first.");

    private static IEnumerable<FieldMessage> BallFaults(LotDetails lot)
    {
        if (lot.Balls is < 0 or > 10_000)
            yield return new(nameof(LotDetails.Balls), "Whole balls are 0 to 10,000. Weigh begun balls and note their grams beside it.");
        else if (lot.Balls == 0 && lot.OpenedGrams is null)
            yield return new(nameof(LotDetails.Balls), "Say how many whole balls there are, or what the begun ones weigh. Remove the lot once it is used up.");
    }
}
