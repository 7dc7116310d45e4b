namespace PatternStudio.Studio.Materials;

/// <summary>A yarn as its label tells.</summary>
/// <param name="Name">1 to <see cref="Yarn.NameLength"/> characters.</param>
/// <param name="Fibre">'100 % cotton'; may be empty.</param>
/// <param name="WeightClass">The standard's number, 0 (lace) to 7 (jumbo); null where not known.</param>
/// <param name="MetresPerBall">Above 0, at most 10 000 m; null where not known.</param>
/// <param name="GramsPerBall">Above 0, at most 10 000 g; null where not known.</param>
/// <param name="ColourName">May be empty.</param>
/// <param name="ColourHex">'#' and six hexadecimal digits, or empty.</param>
public sealed record YarnDetails(
    string Name,
    string Fibre,
    int? WeightClass,
    double? MetresPerBall,
    double? GramsPerBall,
    string ColourName,
    string ColourHex)
{
    /// <summary>'Marram Cotton, Dusk'.</summary>
    public string NameAndColour => ColourName.Length > 0 ? $"{Name}, {ColourName}" : Name;

    /// <summary>How it is washed, as the label says in words or symbols; may be empty.</summary>
    public string Care { get; init; } = "";

    /// <summary>What a ball costs, 0 to 100 000; null where not noted.</summary>
    public decimal? Price { get; init; }

    /// <summary>Three capital letters by ISO 4217 ('EUR', 'GBP'); empty where there is no price.</summary>
    public string Currency { get; init; } = "";
}

/// <summary>A yarn of the studio.</summary>
/// <param name="Designs">Number of designs made of it.</param>
public sealed record KeptYarn(Guid Id, YarnDetails Details, int Designs);
