using Microsoft.Extensions.Localization;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.YarnShelf;

/// <summary>A yarn as typed from its label, number by number as written.</summary>
public sealed class YarnInput
{
    public string Name { get; set; } = "";

    public string Fibre { get; set; } = "";

    public int? WeightClass { get; set; }

    public string MetresPerBall { get; set; } = "";

    public string GramsPerBall { get; set; } = "";

    public string ColourName { get; set; } = "";

    public string ColourHex { get; set; } = "";

    public string Care { get; set; } = "";

    public string Price { get; set; } = "";

    public string Currency { get; set; } = "";

    /// <summary>A kept yarn to be corrected.</summary>
    public static YarnInput Of(YarnDetails kept)
    {
        var input = new YarnInput();
        input.Take(kept);
        return input;
    }

    /// <summary>Puts a kept yarn into every field.</summary>
    public void Take(YarnDetails kept)
    {
        (Name, Fibre, WeightClass, Care) = (kept.Name, kept.Fibre, kept.WeightClass, kept.Care);
        (MetresPerBall, GramsPerBall) = (Numbers.Write(kept.MetresPerBall), Numbers.Write(kept.GramsPerBall));
        (ColourName, ColourHex) = (kept.ColourName, kept.ColourHex);
        (Price, Currency) = (Numbers.Money(kept.Price), kept.Currency);
    }

    /// <summary>Reads the form.</summary>
    public Outcome<YarnDetails> Read(IStringLocalizer<YarnWords> words)
    {
        var form = new TypedForm();
        double? metres = form.Optional(nameof(MetresPerBall), MetresPerBall, Typed.Metres), grams = form.Optional(nameof(GramsPerBall), GramsPerBall, Typed.Grams);
        double? price = form.Optional(nameof(Price), Price, Typed.Money);
        if (price is not null && Currency.Trim().Length == 0) form.Refuse(nameof(Currency), words["CurrencyMissing"]);
        return form.Wrong.Count > 0
            ? Outcome.Refused(form.Wrong)
            : new YarnDetails(Name.Trim(), Fibre.Trim(), WeightClass, metres, grams, ColourName.Trim(), ColourHex)
            {
                Care = Care.Trim(),
                Price = (decimal?)price,
                Currency = price is null ? "" : Currency.Trim().ToUpperInvariant(),
            };
    }
}
