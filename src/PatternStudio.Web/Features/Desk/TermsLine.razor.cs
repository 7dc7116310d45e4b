using Microsoft.AspNetCore.Components;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Which terms the pattern was read in and how sure that is. A choice is written into the pattern, where readers need it too.</summary>
public sealed partial class TermsLine
{
    [Parameter, EditorRequired]
    public TermsDecision Terms { get; set; } = null!;

    /// <summary>The designer says which terms they are.</summary>
    [Parameter]
    public EventCallback<Terminology> Chosen { get; set; }

    /// <summary>The designer wants to read the pattern in other terms.</summary>
    [Parameter]
    public EventCallback<Terminology> ReadIn { get; set; }

    private Terminology Other => Terms.Terminology == Terminology.Us ? Terminology.Uk : Terminology.Us;

    private string HowKnown => Terms.Origin switch
    {
        TermsOrigin.Found => Words["TermsFound", Shell.Numbers.Percent(Terms.Sureness)],
        TermsOrigin.Assumed => Words["TermsAssumed"],
        _ => Words["TermsStated"],
    };

    private Task ChooseAsync(ChangeEventArgs change) =>
        Enum.TryParse(change.Value as string, out Terminology terms) ? Chosen.InvokeAsync(terms) : Task.CompletedTask;
}
