using Microsoft.AspNetCore.Components;

namespace PatternStudio.Web.Features.Designs.Start;

/// <summary>What a design begins from.</summary>
public enum StartWay { Words, Stitch, Design }

/// <summary>Begins a design: empty or from a pasted pattern, from a stitch, from another design.</summary>
public sealed partial class StartPage
{
    private StartWay way;

    /// <summary>'words', 'stitch' or 'design'.</summary>
    [SupplyParameterFromQuery]
    private string? From { get; set; }

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    private void Cancel() => Navigation.NavigateTo("designs");

    protected override void OnInitialized()
    {
        if (Enum.TryParse(From, ignoreCase: true, out StartWay asked) && Enum.IsDefined(asked)) way = asked;
    }
}
