using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Web.Features.Desk;

/// <summary>The stitches of the pattern, as its words name them.</summary>
public sealed partial class DeskPage
{
    private (CheckedPattern? Of, IReadOnlyList<UsedStitch> List) stitches = (null, []);

    private bool IsInUkTerms => answer?.Pattern?.Pattern.Terms.Terminology == Terminology.Uk;

    /// <summary>Of the words before, while those on the desk are being worked.</summary>
    private IReadOnlyList<UsedStitch> Stitches
    {
        get
        {
            if (answer?.Pattern is { } pattern && !ReferenceEquals(stitches.Of, pattern)) stitches = (pattern, UsedStitches.Of(pattern.Pattern));
            return stitches.List;
        }
    }
}
