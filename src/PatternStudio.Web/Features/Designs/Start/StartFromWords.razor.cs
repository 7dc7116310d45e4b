using Microsoft.AspNetCore.Components;
using PatternStudio.Craft.Reading.Pasting;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Designs.Start;

/// <summary>Begins a design empty or from a pasted pattern, which is tidied; what was dropped is shown.</summary>
public sealed partial class StartFromWords
{
    private const int MostShown = 20_000;
    private string title = "";
    private string text = "";
    private bool asPasted;
    private TidiedText? tidied;
    private IReadOnlyList<FieldMessage> messages = [];

    [Inject]
    private DesignDesk Desk { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    private void Paste(string pasted)
    {
        text = pasted;
        tidied = pasted.Length <= 2_000_000 ? PastedText.Tidy(pasted) : null;
    }

    private async Task CreateAsync()
    {
        string words = tidied is { Repairs.Count: > 0 } && !asPasted ? tidied.Text : text.ReplaceLineEndings("\n");
        string named = title.Trim().Length > 0 ? title.Trim() : FirstLine(words);
        Outcome<Guid> begun = await Desk.CreateAsync(await SignedIn.CallerAsync(), named, words);
        messages = begun.Messages;
        if (begun.Succeeded) Navigation.NavigateTo($"designs/{begun.Value}");
    }

    /// <summary>A pasted pattern mostly begins with its name.</summary>
    private static string FirstLine(string text) => Design.TitleOf(text.Split('\n').Select(line => line.Trim()).FirstOrDefault(line => line.Length > 0) ?? "");

    private static string Begun(string words) => words.Length <= MostShown ? words : words[..MostShown] + " …";
}
