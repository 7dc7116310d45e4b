using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Materials;

/// <summary>What the yarn of a design costs.</summary>
/// <param name="Buy">The whole balls to buy.</param>
/// <param name="Used">The share of them that the design is expected to use.</param>
/// <param name="Currency">By ISO 4217.</param>
/// <param name="Basis">How it was found, in a sentence.</param>
public sealed record YarnCost(decimal Buy, decimal Used, string Currency, string Basis)
{
    /// <summary>Null where the need, the label or the price is not known. All colours are taken to cost the same.</summary>
    public static YarnCost? Of(YarnNeed? need, YarnDetails? yarn)
    {
        if (need is not { Balls: { } balls, Metres: { } metres } || yarn is not { Price: { } price, MetresPerBall: { } perBall }) return null;
        decimal used = Math.Round(price * (decimal)(metres / perBall), 2, MidpointRounding.AwayFromZero);
        string colours = need.Colours.Count > 1 ? " All colours are taken to cost the same." : "";
        return new YarnCost(balls * price, used, yarn.Currency, $"{balls} balls at {price:0.00} {yarn.Currency}; used are {metres:0} of {perBall:0} m a ball.{colours}");
    }
}
