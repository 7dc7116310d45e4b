using PatternStudio.Studio;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>Questions about numbers that can hardly be, each at the field that it is about.</summary>
internal static class SwatchQuestions
{
    public static IReadOnlyList<FieldMessage> About(SwatchDetails swatch, YarnDetails? yarn) => [];
}
