using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Text;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>Questions about numbers that can hardly be, each at the field that it is about.</summary>
internal static class SwatchQuestions
{
    /// <summary>The engine's questions about one swatch.</summary>
    public static IReadOnlyList<FieldMessage> About(SwatchDetails swatch, YarnDetails? yarn)
    {
        YarnLabel? label = yarn?.ToLabel();
        return [.. Asked(swatch, label).Select(question => new FieldMessage(FieldOf(question, swatch, label), question))];
    }

    /// <summary>A question is about the field without which nobody would ask it; what none of these answers for is about the counts.</summary>
    private static string FieldOf(string question, SwatchDetails swatch, YarnLabel? label)
    {
        if (!Asked(swatch with { HookMm = null }, label).Contains(question)) return nameof(swatch.HookMm);
        if (!Asked(swatch with { WeightGrams = null }, label).Contains(question)) return nameof(swatch.WeightGrams);
        if (!Asked(swatch with { WidthBeforeCm = null }, label).Contains(question)) return nameof(swatch.WidthBeforeCm);
        return swatch.Counted == Counting.Rounds ? nameof(swatch.Rows) : nameof(swatch.Stitches);
    }

    private static EquatableArray<string> Asked(SwatchDetails swatch, YarnLabel? label) => SwatchDoubts.Of(swatch.ToMeasure(), label);
}
