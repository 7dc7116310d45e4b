using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Desk;

/// <summary>What the design needs of one yarn, beside what of it is in the cupboard.</summary>
public sealed partial class StashPart
{
    [Parameter, EditorRequired]
    public YarnPart Part { get; set; } = null!;

    /// <summary>All lots of the studio.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<KeptLot> Lots { get; set; } = [];

    /// <summary>The name of the yarn; empty where none was chosen.</summary>
    [Parameter]
    public string Yarn { get; set; } = "";

    [Parameter, EditorRequired]
    public Guid DesignId { get; set; }

    /// <summary>Sets grams of a lot aside for the design; 0 gives them back.</summary>
    [Parameter]
    public Func<KeptLot, double, Task<Outcome>>? Reserve { get; set; }

    private IReadOnlyList<KeptLot> Own => [.. Lots.Where(lot => lot.Details.YarnId == Part.YarnId)];

    private StashFit Fit => StashFit.Of(Part.Need, Own, DesignId);

    /// <summary>Other yarns of the same weight of which there is enough.</summary>
    private IReadOnlyList<string> Others =>
    [
        .. from lot in Lots
           where lot.Details.YarnId != Part.YarnId && Own is [{ Yarn.WeightClass: { } weight }, ..] && lot.Yarn.WeightClass == weight
           group lot by lot.Details.YarnId into yarn
           where StashFit.Of(Part.Need, yarn, DesignId).Answer == Suffices.Yes
           select yarn.First().Yarn.Name,
    ];

    private string Tone => Fit.Answer switch
    {
        Suffices.Yes => "good",
        Suffices.Barely => "warning",
        Suffices.No => "error",
        _ => "note",
    };

    private string Says => Fit.Answer == Suffices.NotKnown
        ? Words["StashNeedNotKnown"]
        : Words["StashCompare", Numbers.Amount(Fit.Expected), Numbers.Amount(Fit.Sure), Numbers.Amount(Fit.There)].Value
            + (Fit.Missing > 0 ? " " + Words["StashMissing", Numbers.Amount(Fit.Missing)] : "");

    /// <summary>Grams to suggest: what the design needs to be sure and has not set aside yet, as far as this lot goes. By the lot's own label: another yarn weighs otherwise.</summary>
    private double Wanted(KeptLot lot)
    {
        if (lot.Yarn is not { GramsPerBall: { } grams, MetresPerBall: > 0 and { } metres }) return 0;
        // Without the dust of binary fractions, which would make a gram more.
        double sure = Math.Round(Fit.Sure * grams / metres, 6);
        double elsewhere = Own.Where(other => other.Id != lot.Id).Sum(other => other.ReservedBy(DesignId));
        return Math.Ceiling(Math.Clamp(sure - elsewhere, 0, Math.Max(0, lot.GramsFor(DesignId) ?? 0)));
    }
}
