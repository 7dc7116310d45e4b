using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Sets some of a lot aside for a design, or gives it back.</summary>
public sealed partial class ReserveLine
{
    private string written = "";
    private string? wrong;
    private double suggested;

    [Parameter, EditorRequired]
    public KeptLot Lot { get; set; } = null!;

    [Parameter, EditorRequired]
    public Guid DesignId { get; set; }

    /// <summary>Grams to suggest; 0 for none.</summary>
    [Parameter]
    public double Wanted { get; set; }

    [Parameter]
    public Func<KeptLot, double, Task<Outcome>>? Reserve { get; set; }

    /// <summary>A suggestion follows the numbers until somebody writes another.</summary>
    protected override void OnParametersSet()
    {
        if (written == Say(suggested)) written = Say(Wanted);
        suggested = Wanted;
    }

    private async Task ReadAsync()
    {
        TypedNumber grams = Typed.Grams(written);
        wrong = string.IsNullOrWhiteSpace(written) ? Words["GramsMissing"] : grams.Trouble;
        if (wrong is null) await SetAsync(grams.Value);
    }

    private async Task SetAsync(double grams)
    {
        if (Reserve is null) return;
        Outcome done = await Reserve(Lot, grams);
        wrong = done.Succeeded ? null : done.ToString();
        if (done.Succeeded) written = Say(suggested);
    }

    private static string Say(double grams) => grams > 0 ? Numbers.Write(grams) : "";
}
