using Microsoft.AspNetCore.Components;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.YarnShelf;

/// <summary>A lot in a few lines: what is there, where, what is free, and who has set some aside.</summary>
public sealed partial class LotLine
{
    [Parameter, EditorRequired]
    public KeptLot Lot { get; set; } = null!;

    private string What => (Lot.Details.Balls, Lot.Details.OpenedGrams) switch
    {
        (0, { } opened) => Words["OpenedOnly", Numbers.Write(opened)],
        (var balls, null) => Words[balls == 1 ? "OneBall" : "SomeBalls", balls],
        var (balls, opened) => Words[balls == 1 ? "OneBallOpened" : "SomeBallsOpened", balls, Numbers.Write(opened)],
    };

    private IEnumerable<string> Facts =>
    [
        Lot.Details.DyeLot.Length > 0 ? Words["DyeLotOf", Lot.Details.DyeLot] : Words["DyeLotNotNoted"],
        .. Lot.Details.Place.Length > 0 ? [Lot.Details.Place] : Array.Empty<string>(),
        .. Lot.FreeGrams is > 0 and { } free ? [FreeWords(free)] : Array.Empty<string>(),
        .. Lot.Details.Note.Length > 0 ? [Lot.Details.Note] : Array.Empty<string>(),
    ];

    private string FreeWords(double free) => Lot.Metres(free) is { } metres
        ? Words["Free", Numbers.Amount(free), Numbers.Amount(metres)]
        : Words["FreeGrams", Numbers.Amount(free)];
}
