using System.Globalization;
using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell;
using PatternStudio.Web.Shell.Parts;

namespace PatternStudio.Web.Features.YarnShelf;

/// <summary>A yarn as its label tells.</summary>
public sealed partial class YarnForm
{
    private IReadOnlyList<FieldMessage> messages = [];
    private IReadOnlyList<Differing>? theirs;
    private YarnDetails? theirYarn;

    /// <summary>What is in the form.</summary>
    [Parameter, EditorRequired]
    public YarnInput Input { get; set; } = null!;

    /// <summary>The yarn that is corrected; null for a new one.</summary>
    [Parameter]
    public YarnDetails? Before { get; set; }

    /// <summary>Keeps the yarn in the place of what it was before; gives back what is wrong with it, or what somebody else kept meanwhile.</summary>
    [Parameter, EditorRequired]
    public Func<YarnDetails, YarnDetails?, Task<ChangeOutcome<YarnDetails>>> Keep { get; set; } = null!;

    [Parameter]
    public EventCallback Cancelled { get; set; }

    private async Task SaveAsync()
    {
        Outcome<YarnDetails> read = Input.Read(Words);
        messages = read.Messages;
        if (read.Value is not { } yarn || !read.Succeeded) return;
        ChangeOutcome<YarnDetails> kept = await Keep(yarn, theirYarn ?? Before);
        (messages, theirYarn) = (kept.Messages, kept.Theirs);
        theirs = theirYarn is null ? null : Differences(theirYarn, yarn);
    }

    private IReadOnlyList<Differing> Differences(YarnDetails other, YarnDetails mine) => Differing.Between(
        YarnInput.Of(other),
        YarnInput.Of(mine),
        (Words["Name"], it => it.Name),
        (Words["Grams"], it => it.GramsPerBall),
        (Words["Metres"], it => it.MetresPerBall),
        (Words["WeightClass"], it => it.WeightClass is { } weight ? Words[$"Weight{weight}"] : ""),
        (Words["Fibre"], it => it.Fibre),
        (Words["ColourName"], it => it.ColourName),
        (Words["Colour"], it => it.ColourHex),
        (Words["Price"], it => $"{it.Price} {it.Currency}".Trim()),
        (Words["Care"], it => it.Care));

    private void TakeTheirs()
    {
        if (theirYarn is not null) Input.Take(theirYarn);
        theirs = null;
    }

    private string? Taken(string written, Func<string, TypedNumber> read, string unit) =>
        Typed.Echo(written, read, unit) is { } taken ? Words["TakenAs", taken].Value : null;

    private void PickWeight(ChangeEventArgs change) =>
        Input.WeightClass = int.TryParse(change.Value as string, CultureInfo.InvariantCulture, out int weight) ? weight : null;

    private void PickColour(ChangeEventArgs change) => Input.ColourHex = change.Value as string ?? "";

    private string? Wrong(string field) => messages.For(field);
}
