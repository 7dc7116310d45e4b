namespace PatternStudio.Web.Features.Tour;

/// <summary>A stop of the tour.</summary>
/// <param name="Name">Its words are 'TitleName' and 'TextName'.</param>
/// <param name="Page">Where it is: 'designs'; null for the desk of the design that the tour goes through.</param>
/// <param name="Shows">The part of the page that it speaks of, as a selector; what isn't there is not pointed at.</param>
public sealed record Stop(string Name, string? Page, string Shows)
{
    /// <summary>The whole tour; about ten seconds each.</summary>
    public static IReadOnlyList<Stop> All { get; } =
    [
        new("Designs", "designs", "main .page"),
        new("Words", null, "#panel-words > section"),
        new("Findings", null, ".findings"),
        new("Numbers", null, "#panel-numbers > :first-child, .desk-narrow > [role=tablist]"),
        new("Views", null, "#panel-numbers > :last-child, .desk-narrow > [role=tablist]"),
        new("Swatches", "swatches", "main .page"),
    ];
}
