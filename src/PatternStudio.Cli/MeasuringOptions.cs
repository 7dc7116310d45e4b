using System.CommandLine;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Text;

namespace PatternStudio.Cli;

/// <summary>What a piece is measured by: swatches, or what the pattern states.</summary>
internal static class MeasuringOptions
{
    public static Option<string[]> Swatch() => new("--swatch")
    {
        Description = "Your swatch, such as \"16 sts, 18 rows = 10 x 10 cm, 12 g\". Given again, further swatches; the first is the gauge.",
        HelpName = "SWATCH",
    };

    public static Option<bool> Stated() => new("--stated") { Description = "Without a swatch: use the gauge, ball and hook that the pattern states." };

    /// <exception cref="Refusal">A swatch can't be read.</exception>
    public static MeasuringBasis Basis(CheckedPattern pattern, string[]? swatches, bool stated, YarnLabel? label)
    {
        Swatch[] measured = [.. (swatches ?? []).Select(text => Read(text, words => Craft.Measuring.Swatch.Parse(words, pattern.Pattern.Terms.Terminology), "--swatch")!)];
        if (measured.Length > 0 || !stated) return new MeasuringBasis(measured.ToEquatableArray(), label);
        MeasuringBasis said = StatedMaterials.Of(pattern);
        return said with { Yarn = label ?? said.Yarn };
    }

    /// <exception cref="Refusal">The words can't be read.</exception>
    public static T? Read<T>(string? words, Func<string, Parsed<T>> parse, string option)
        where T : class
    {
        if (words is null) return null;
        Parsed<T> parsed = parse(words);
        return parsed.IsRead ? parsed.Value : throw new Refusal($"{option}: {parsed.Message}");
    }
}
