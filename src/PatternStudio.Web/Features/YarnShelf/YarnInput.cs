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

    /// <summary>A kept yarn to be corrected.</summary>
    public static YarnInput Of(YarnDetails kept) => new()
    {
        Name = kept.Name,
        Fibre = kept.Fibre,
        WeightClass = kept.WeightClass,
        MetresPerBall = Numbers.Write(kept.MetresPerBall),
        GramsPerBall = Numbers.Write(kept.GramsPerBall),
        ColourName = kept.ColourName,
        ColourHex = kept.ColourHex,
    };

    /// <summary>Reads the form.</summary>
    /// <param name="notANumber">The sentence for a field that is no number above zero.</param>
    public Outcome<YarnDetails> Read(string notANumber)
    {
        var wrong = new List<FieldMessage>();
        double? metres = Optional(nameof(MetresPerBall), MetresPerBall), grams = Optional(nameof(GramsPerBall), GramsPerBall);
        return wrong.Count > 0
            ? Outcome.Refused(wrong)
            : new YarnDetails(Name.Trim(), Fibre.Trim(), WeightClass, metres, grams, ColourName.Trim(), ColourHex);

        double? Optional(string field, string written)
        {
            if (string.IsNullOrWhiteSpace(written)) return null;
            if (Numbers.ReadPositive(written) is { } number) return number;
            wrong.Add(new(field, notANumber));
            return null;
        }
    }
}
