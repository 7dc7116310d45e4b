using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace PatternStudio.Web.Shell.Parts;

/// <summary>Tabs with the keys that readers know: arrows, Home and End. The panels are the page's own.</summary>
public sealed partial class TabStrip<TTab>
{
    private readonly Dictionary<TTab, ElementReference> buttons = [];

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    [Parameter, EditorRequired]
    public IReadOnlyList<TTab> Tabs { get; set; } = [];

    [Parameter, EditorRequired]
    public TTab Selected { get; set; } = default!;

    [Parameter]
    public EventCallback<TTab> SelectedChanged { get; set; }

    /// <summary>The words on a tab.</summary>
    [Parameter, EditorRequired]
    public Func<TTab, string> Title { get; set; } = null!;

    /// <summary>The id of the panel that a tab shows.</summary>
    [Parameter, EditorRequired]
    public Func<TTab, string> PanelId { get; set; } = null!;

    private string TabId(TTab tab) => $"tab-{PanelId(tab)}-{Place(tab)}";

    private int Place(TTab tab) => Tabs.TakeWhile(other => !EqualityComparer<TTab>.Default.Equals(other, tab)).Count();

    private async Task MoveAsync(KeyboardEventArgs key)
    {
        int at = Place(Selected);
        int? to = key.Key switch
        {
            "ArrowRight" => (at + 1) % Tabs.Count,
            "ArrowLeft" => (at + Tabs.Count - 1) % Tabs.Count,
            "Home" => 0,
            "End" => Tabs.Count - 1,
            _ => null,
        };
        if (to is not { } place) return;
        await SelectedChanged.InvokeAsync(Tabs[place]);
        await buttons[Tabs[place]].FocusAsync();
    }
}
