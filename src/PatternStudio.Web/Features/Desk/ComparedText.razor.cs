using Microsoft.AspNetCore.Components;
using PatternStudio.Studio.Designs.Comparing;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Two texts as one: what was under what is, word by word; long stretches that are alike are left out.</summary>
public sealed partial class ComparedText
{
    /// <summary>Lines shown around a difference.</summary>
    private const int Around = 2;

    private IReadOnlyList<ComparedLine> lines = [];
    private (string Before, string After) compared;

    [Parameter, EditorRequired]
    public string Before { get; set; } = "";

    [Parameter, EditorRequired]
    public string After { get; set; } = "";

    /// <summary>What the two are.</summary>
    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    /// <summary>Lines, and numbers of lines left out.</summary>
    private IEnumerable<object> Shown
    {
        get
        {
            int left = 0;
            for (int i = 0; i < lines.Count; i++)
            {
                if (IsNearDifference(i))
                {
                    if (left > 0) yield return left;
                    left = 0;
                    yield return lines[i];
                }
                else
                {
                    left++;
                }
            }

            if (left > 0) yield return left;
        }
    }

    protected override void OnParametersSet()
    {
        if (compared == (Before, After) && lines.Count > 0) return;
        compared = (Before, After);
        lines = WordsComparison.Between(Before, After);
    }

    private bool IsNearDifference(int at)
    {
        for (int i = Math.Max(0, at - Around); i <= Math.Min(lines.Count - 1, at + Around); i++)
            if (lines[i].Fate != LineFate.Same) return true;
        return false;
    }

    private static string Text(IReadOnlyList<ComparedWords> words) => string.Concat(words.Select(part => part.Words));
}
