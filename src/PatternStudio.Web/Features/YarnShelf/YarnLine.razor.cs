using Microsoft.AspNetCore.Components;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.YarnShelf;

/// <summary>A yarn in two lines.</summary>
public sealed partial class YarnLine
{
    [Parameter, EditorRequired]
    public YarnDetails Yarn { get; set; } = null!;

    private IEnumerable<string> Facts =>
    [
        (Yarn.MetresPerBall, Yarn.GramsPerBall) switch
        {
            ({ } metres, { } grams) => Words["BallOf", Numbers.Write(metres), Numbers.Write(grams)],
            (null, { } grams) => Words["BallOfGrams", Numbers.Write(grams)],
            ({ } metres, null) => Words["BallOfMetres", Numbers.Write(metres)],
            _ => Words["BallNotKnown"],
        },
        Yarn.WeightClass is { } weight ? Words[$"Weight{weight}"] : Words["WeightNotKnown"],
        .. Yarn.Fibre.Length > 0 ? [Yarn.Fibre] : Array.Empty<string>(),
        .. Yarn.Price is { } price ? [Words["PriceOf", Numbers.Money(price), Yarn.Currency]] : Array.Empty<string>(),
        .. Yarn.Care.Length > 0 ? [Yarn.Care] : Array.Empty<string>(),
    ];
}
