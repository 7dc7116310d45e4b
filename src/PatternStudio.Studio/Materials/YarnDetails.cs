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
    string ColourHex);

/// <summary>A yarn of the studio.</summary>
/// <param name="Designs">Number of designs made of it.</param>
public sealed record KeptYarn(Guid Id, YarnDetails Details, int Designs);
