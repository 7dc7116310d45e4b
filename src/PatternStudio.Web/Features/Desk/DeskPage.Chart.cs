using PatternStudio.Craft.Text;

namespace PatternStudio.Web.Features.Desk;

/// <summary>The chart beside the words.</summary>
public sealed partial class DeskPage
{
    private int ShownSize => Math.Min(size, Results.Sizes.Count - 1);

    /// <summary>From a stitch to its words.</summary>
    private async Task GoToWordsAsync(TextSpan words)
    {
        if (words.End > text.Length) return;
        if (narrow) view = DeskView.Words;
        StateHasChanged();
        await editor!.SelectAsync(words);
    }
}
