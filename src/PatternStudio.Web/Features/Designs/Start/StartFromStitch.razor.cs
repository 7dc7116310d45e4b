using System.Globalization;
using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.StitchLibrary;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Designs.Start;

/// <summary>Begins a design from a stitch pattern of the library, as wide as wanted.</summary>
public sealed partial class StartFromStitch
{
    private string search = "";
    private StitchKind? kind;
    private LibraryStitch? chosen;
    private string repeats = "6";
    private string title = "";
    private IReadOnlyList<FieldMessage> messages = [];

    [Inject]
    private DesignDesk Desk { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    private List<LibraryStitch> Found => [.. StitchShelf.Search(search, kind)];

    private int? Written => int.TryParse(repeats.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int number)
        && number is >= LibraryStitch.FewestRepeats and <= LibraryStitch.MostRepeats ? number : null;

    private int Repeats => Written ?? LibraryStitch.FewestRepeats;

    /// <summary>About thirty stitches: the width of a scarf in most yarns.</summary>
    private void Choose(LibraryStitch stitch)
    {
        chosen = stitch;
        repeats = Math.Max(LibraryStitch.FewestRepeats, 30 / stitch.StitchesEach).ToString(CultureInfo.InvariantCulture);
        messages = [];
    }

    private async Task CreateAsync()
    {
        if (Written is not { } width)
        {
            messages = [new("repeats", Words["RepeatsWrong", LibraryStitch.FewestRepeats, LibraryStitch.MostRepeats])];
            return;
        }

        string named = title.Trim().Length > 0 ? title.Trim() : chosen!.Name;
        Outcome<Guid> begun = await Desk.CreateAsync(await SignedIn.CallerAsync(), named, chosen!.Write(width));
        messages = begun.Messages;
        if (begun.Succeeded) Navigation.NavigateTo($"designs/{begun.Value}");
    }
}
