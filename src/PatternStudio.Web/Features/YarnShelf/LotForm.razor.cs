using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell.Parts;

namespace PatternStudio.Web.Features.YarnShelf;

/// <summary>What lies in the cupboard of one yarn from one dye bath.</summary>
public sealed partial class LotForm
{
    private IReadOnlyList<FieldMessage> messages = [];
    private IReadOnlyList<Differing>? theirs;
    private LotDetails? theirLot;

    /// <summary>What is in the form.</summary>
    [Parameter, EditorRequired]
    public LotInput Input { get; set; } = null!;

    [Parameter, EditorRequired]
    public YarnDetails Yarn { get; set; } = null!;

    /// <summary>The lot that is corrected; null for a new one.</summary>
    [Parameter]
    public LotDetails? Before { get; set; }

    /// <summary>Keeps the lot in the place of what it was before; gives back what is wrong with it, or what somebody else kept meanwhile.</summary>
    [Parameter, EditorRequired]
    public Func<LotDetails, LotDetails?, Task<ChangeOutcome<LotDetails>>> Keep { get; set; } = null!;

    [Parameter]
    public EventCallback Cancelled { get; set; }

    private async Task SaveAsync()
    {
        Outcome<LotDetails> read = Input.Read(Words);
        messages = read.Messages;
        if (read.Value is not { } lot || !read.Succeeded) return;
        ChangeOutcome<LotDetails> kept = await Keep(lot, theirLot ?? Before);
        (messages, theirLot) = (kept.Messages, kept.Theirs);
        theirs = theirLot is null ? null : Differences(theirLot, lot);
    }

    private IReadOnlyList<Differing> Differences(LotDetails other, LotDetails mine) => Differing.Between(
        LotInput.Of(other),
        LotInput.Of(mine),
        (Words["Balls"], it => it.Balls),
        (Words["Opened"], it => it.OpenedGrams),
        (Words["DyeLot"], it => it.DyeLot),
        (Words["Place"], it => it.Place),
        (Words["LotNote"], it => it.Note));

    private void TakeTheirs()
    {
        if (theirLot is not null) Input.Take(theirLot);
        theirs = null;
    }

    private string? Wrong(string field) => messages.For(field);
}
