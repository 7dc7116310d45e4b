using Microsoft.Extensions.Localization;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell.Parts;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>Where two corrections of a swatch differ, field by field as the form names them.</summary>
internal static class SwatchDifferences
{
    public static IReadOnlyList<Differing> Between(
        SwatchDetails theirs, SwatchDetails mine, IStringLocalizer<SwatchWords> words, IReadOnlyList<KeptYarn> yarns) =>
        Differing.Between(
            SwatchInput.Of(theirs),
            SwatchInput.Of(mine),
            (words["WorkedIn"], it => $"{it.WorkedIn} {it.Pattern} {it.FromRow} {it.ToRow}".Trim()),
            (words["CountedIn"], it => words[$"Counted{it.Counted}"]),
            (words["AcrossStitches"], it => it.Stitches),
            (words["StitchesEach"], it => it.StitchesEach),
            (words["Rows"], it => it.Rows),
            (words["Width"], it => it.WidthCm),
            (words["Height"], it => it.HeightCm),
            (words["WidthBefore"], it => it.WidthBeforeCm),
            (words["HeightBefore"], it => it.HeightBeforeCm),
            (words["Weight"], it => it.WeightGrams),
            (words["Hook"], it => it.HookMm),
            (words["Yarn"], it => yarns.FirstOrDefault(yarn => yarn.Id == it.YarnId)?.Details.Name ?? ""),
            (words["MeasuredOn"], it => it.MeasuredOn),
            (words["Minutes"], it => it.Minutes),
            (words["Note"], it => it.Note));
}
