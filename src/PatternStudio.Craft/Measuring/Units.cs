namespace PatternStudio.Craft.Measuring;

/// <summary>The units that swatches and ball bands use, by every usual spelling.</summary>
internal static class Units
{
    public static Length? ToLength(double number, string unit) => unit switch
    {
        "in" or "ins" or "inch" or "inches" or "\"" or "″" or "”" => Length.FromInches(number),
        "cm" or "cms" or "centimetre" or "centimetres" or "centimeter" or "centimeters" => Length.FromCentimetres(number),
        "mm" or "millimetre" or "millimetres" or "millimeter" or "millimeters" => Length.FromMillimetres(number),
        _ => null,
    };

    /// <summary>Fabric in the units of large pieces too: a blanket of 1.5 m or 5 ft. Apart from the others, for in a swatch '40 m' is yarn.</summary>
    public static Length? ToFabricLength(double number, string unit) => ToLength(number, unit) ?? unit switch
    {
        "m" or "metre" or "metres" or "meter" or "meters" => Length.FromCentimetres(number * 100),
        "ft" or "foot" or "feet" or "'" or "′" => Length.FromInches(number * 12),
        "yd" or "yds" or "yard" or "yards" => Length.FromInches(number * 36),
        _ => null,
    };

    public static Mass? ToMass(double number, string unit) => unit switch
    {
        "g" or "gr" or "gm" or "gms" or "gram" or "grams" or "gramme" or "grammes" => Mass.FromGrams(number),
        "kg" => Mass.FromGrams(number * 1000),
        "lb" or "lbs" or "pound" or "pounds" => Mass.FromOunces(number * 16),
        "oz" or "ozs" or "ounce" or "ounces" => Mass.FromOunces(number),
        _ => null,
    };

    public static YarnLength? ToYarnLength(double number, string unit) => unit switch
    {
        "m" or "mtr" or "mtrs" or "metre" or "metres" or "meter" or "meters" => YarnLength.FromMetres(number),
        "yd" or "yds" or "yard" or "yards" => YarnLength.FromYards(number),
        _ => null,
    };
}
