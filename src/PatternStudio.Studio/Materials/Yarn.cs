namespace PatternStudio.Studio.Materials;

/// <summary>A yarn as its label tells.</summary>
public sealed class Yarn
{
    /// <summary>Longest name, fibre or colour name.</summary>
    public const int NameLength = 200;

    /// <summary>Longest words on care.</summary>
    public const int CareLength = 300;

    private Yarn() { }

    internal Yarn(Guid id, Guid studioId, YarnDetails details)
    {
        (Id, StudioId) = (id, studioId);
        Change(details);
    }

    public Guid Id { get; private set; }

    public Guid StudioId { get; private set; }

    public string Name { get; private set; } = "";

    public string Fibre { get; private set; } = "";

    public int? WeightClass { get; private set; }

    public double? MetresPerBall { get; private set; }

    public double? KilogramsPerBall { get; private set; }

    public string ColourName { get; private set; } = "";

    /// <summary>'#6A8F9C'; empty for none.</summary>
    public string ColourHex { get; private set; } = "";

    public string Care { get; private set; } = "";

    /// <summary>Of a ball.</summary>
    public decimal? Price { get; private set; }

    /// <summary>Of the price, by ISO 4217.</summary>
    public string Currency { get; private set; } = "";

    /// <summary>Goes up with every change, so that of two changes at the same time one is noticed and done again.</summary>
    public int RowVersion { get; private set; }

    internal YarnDetails Details => new(
        Name, Fibre, WeightClass, MetresPerBall, Si.Grams(KilogramsPerBall), ColourName, ColourHex)
    {
        Care = Care,
        Price = Price,
        Currency = Currency,
    };

    internal void Change(YarnDetails details)
    {
        (Name, Fibre, WeightClass) = (details.Name, details.Fibre, details.WeightClass);
        (MetresPerBall, KilogramsPerBall) = (details.MetresPerBall, details.GramsPerBall / 1000);
        (ColourName, ColourHex) = (details.ColourName, details.ColourHex);
        (Care, Price, Currency) = (details.Care, details.Price, details.Currency);
        RowVersion++;
    }
}
