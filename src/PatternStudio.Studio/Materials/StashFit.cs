using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Materials;

/// <summary>Whether yarn suffices.</summary>
public enum Suffices
{
    /// <summary>For nine makers in ten.</summary>
    Yes,

    /// <summary>For what is expected, but not with the margin that nine makers in ten keep within.</summary>
    Barely,

    No,

    /// <summary>The need, or what there is, is not known.</summary>
    NotKnown,
}

/// <summary>What is in the cupboard beside what a design needs. All lengths in metres.</summary>
/// <param name="Expected">What the design is expected to use.</param>
/// <param name="Sure">What nine makers in ten do not exceed.</param>
/// <param name="There">What the design may take of its yarn, all lots together.</param>
/// <param name="Lots">The lots that are needed, the fewest that suffice; all of them where all together don't.</param>
public sealed record StashFit(Suffices Answer, double Expected, double Sure, double There, IReadOnlyList<KeptLot> Lots)
{
    private static readonly StashFit Unknown = new(Suffices.NotKnown, 0, 0, 0, []);

    /// <summary>The dye lots of <see cref="Lots"/>; more than one may differ in shade.</summary>
    public IReadOnlyList<string> DyeLots => [.. Lots.Select(lot => lot.Details.DyeLot).Distinct(StringComparer.OrdinalIgnoreCase)];

    /// <summary>True where yarn of several dye baths would meet in one piece; lots without a name may be anything.</summary>
    public bool MixesDyeLots => DyeLots.Count > 1 || (Lots.Count > 1 && DyeLots.Contains(""));

    /// <summary>What is missing to be sure; 0 where nothing is.</summary>
    public double Missing => Math.Max(0, Sure - There);

    /// <summary>Compares a need with lots of one yarn.</summary>
    /// <param name="need">Null where not known.</param>
    /// <param name="lots">Lots of the yarn in question.</param>
    /// <param name="designId">The design: what it has set aside itself counts as there. Null for what is free.</param>
    public static StashFit Of(YarnNeed? need, IEnumerable<KeptLot> lots, Guid? designId = null)
    {
        if (need is not { Metres: { } expected }) return Unknown;
        double sure = Math.Max(need.BuyMetres ?? expected, expected);
        (KeptLot Lot, double Metres)[] there =
        [
            .. from lot in lots
               let metres = lot.Metres(designId is { } design ? lot.GramsFor(design) : lot.FreeGrams)
               where metres > 0
               orderby designId is { } own && lot.ReservedBy(own) > 0 descending, metres descending, lot.Id
               select (lot, metres.Value),
        ];
        double all = there.Sum(line => line.Metres);
        Suffices answer = all >= sure ? Suffices.Yes : all >= expected ? Suffices.Barely : Suffices.No;
        return new StashFit(answer, expected, sure, all, Fewest(there, sure));
    }

    /// <summary>One lot if one suffices (the smallest that does, so that the large ones stay whole); else the largest ones until they do.</summary>
    private static List<KeptLot> Fewest((KeptLot Lot, double Metres)[] there, double sure)
    {
        if (there.Where(line => line.Metres >= sure).OrderBy(line => line.Metres).FirstOrDefault() is { Lot: { } one }) return [one];
        var taken = new List<KeptLot>();
        double sum = 0;
        foreach ((KeptLot lot, double metres) in there)
        {
            if (sum >= sure) break;
            taken.Add(lot);
            sum += metres;
        }

        return taken;
    }
}
