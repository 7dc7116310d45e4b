using System.Globalization;
using System.Text.RegularExpressions;
using CsvHelper;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Exchange;

/// <summary>Reads one line of a yarn table: numbers with or without their unit, in metres and grams or in yards and ounces.</summary>
internal static partial class YarnReading
{
    /// <summary>Exact by definition: a yard is 0.9144 m, an avoirdupois ounce 28.349523125 g (International yard and pound agreement, 1959).</summary>
    private const double MetresPerYard = 0.9144, GramsPerOunce = 28.349523125;

    /// <summary>What yarn shops call the standard's classes. From memory; the numbers are the standard's.</summary>
    private static readonly Dictionary<string, int> Classes = new()
    {
        ["lace"] = 0, ["thread"] = 0, ["superfine"] = 1, ["fingering"] = 1, ["sock"] = 1, ["4ply"] = 1, ["fine"] = 2, ["sport"] = 2, ["baby"] = 2, ["5ply"] = 2,
        ["light"] = 3, ["dk"] = 3, ["doubleknitting"] = 3, ["lightworsted"] = 3, ["8ply"] = 3, ["medium"] = 4, ["worsted"] = 4, ["aran"] = 4, ["10ply"] = 4, ["afghan"] = 4,
        ["bulky"] = 5, ["chunky"] = 5, ["12ply"] = 5, ["superbulky"] = 6, ["superchunky"] = 6, ["roving"] = 6, ["jumbo"] = 7,
    };

    public static YarnLine Line(int at, IReaderRow row, YarnColumns columns)
    {
        var faults = new List<string>();
        string name = Words("name"), brand = Words("brand");
        double? metres = Amount("length", "the length of a ball", MetresPerYard, Yards()), grams = Amount("grams", "the weight of a ball", GramsPerOunce, Ounces());
        double? balls = Number("balls", "how many balls there are"), price = Number("price", "the price");
        var yarn = new YarnDetails(
            brand.Length > 0 && !name.Contains(brand, StringComparison.OrdinalIgnoreCase) ? $"{brand} {name}" : name,
            Words("fibre"), Class(), metres, grams, Words("colour"), Hex())
        {
            Care = Words("care"),
            Price = price is { } paid and >= 0 and <= 100_000 ? Math.Round((decimal)paid, 2) : null,
            Currency = price is null ? "" : Words("currency") is { Length: > 0 } named ? named.ToUpperInvariant() : Symbol(Words("price")),
        };
        if (yarn.Price is not null && yarn.Currency.Length == 0) yarn = yarn with { Price = null };
        if (balls is < 0 or > 10_000 || (balls is { } count && count != Math.Floor(count))) faults.Add($"'{Words("balls")}' is no number of whole balls.");
        faults.AddRange(Wording.ShortFaults("", "The dye lot", Words("lot"), StashLot.NameLength).Select(fault => fault.Message));
        if (name.Length == 0) faults.Add("It has no name.");
        else faults.AddRange(MaterialRefusals.OfYarn(yarn).Select(fault => fault.Message));
        return new YarnLine(at, yarn, faults.Count == 0 && balls is > 0 ? (int)balls : null, Words("lot"), faults);

        string Words(string key) => columns.Get(row, key);

        double? Number(string key, string what)
        {
            string words = Words(key);
            if (words.Length == 0) return null;
            Match found = FirstNumber().Match(words);
            if (found.Success && Read(found.Value) is { } number) return number;
            faults.Add($"'{words}' does not say {what} in a number.");
            return null;
        }

        double? Amount(string key, string what, double other, Regex otherUnit) =>
            Number(key, what) * (otherUnit.IsMatch(Words(key)) || (!Metric().IsMatch(Words(key)) && otherUnit.IsMatch(columns.TitleOf(key))) ? other : 1);

        int? Class()
        {
            string words = Words("class");
            if (words.Length == 0) return null;
            string plain = Signs().Replace(words.ToLowerInvariant(), "");
            if (Classes.TryGetValue(plain, out int known)) return known;
            if (ClassNumber().Match(words) is { Success: true } told) return int.Parse(told.Groups[1].ValueSpan, CultureInfo.InvariantCulture);
            faults.Add($"'{words}' is no yarn weight that is known here. Write its number (0 to 7) or its name, such as DK or worsted.");
            return null;
        }

        string Hex() => Words("hex") is { Length: 6 } bare ? $"#{bare.ToUpperInvariant()}" : Words("hex").ToUpperInvariant();
    }

    /// <summary>'1,234.5' and '1.234,5': the last of the two signs is the decimal one, unless three digits follow it alone and it is a comma.</summary>
    private static double? Read(string number)
    {
        int comma = number.LastIndexOf(','), point = number.LastIndexOf('.');
        bool commaDecides = comma > point && !(point < 0 && number.Length - comma == 4);
        string plain = commaDecides ? number.Replace(".", "").Replace(',', '.') : number.Replace(",", "");
        return double.TryParse(plain, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out double read) ? read : null;
    }

    private static string Symbol(string price) =>
        price.Contains('€') ? "EUR" : price.Contains('£') ? "GBP" : price.Contains('$') ? "USD" : "";

    [GeneratedRegex(@"-?[0-9]+(?:[.,][0-9]+)*")]
    private static partial Regex FirstNumber();

    [GeneratedRegex(@"yd|yard", RegexOptions.IgnoreCase)]
    private static partial Regex Yards();

    [GeneratedRegex(@"\boz|ounce|[0-9]oz", RegexOptions.IgnoreCase)]
    private static partial Regex Ounces();

    [GeneratedRegex(@"[0-9]\s*(?:m|g|metres?|meters?|grams?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Metric();

    [GeneratedRegex("[^a-z0-9]")]
    private static partial Regex Signs();

    [GeneratedRegex(@"^\D{0,3}([0-7])(?:\D|$)")]
    private static partial Regex ClassNumber();
}
