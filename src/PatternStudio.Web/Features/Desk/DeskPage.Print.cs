using Microsoft.JSInterop;
using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using PatternStudio.Publishing;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Printing the design. Its chart is drawn when it is asked for: few look at it on paper, and a large one takes a while.</summary>
public sealed partial class DeskPage
{
    /// <summary>Above so many stitches and chains a sheet of paper shows rows as blocks.</summary>
    private const int MostOnPaper = 6_000;

    /// <summary>Longer words are laid out for paper only when they are to be printed: they would be sent with every change.</summary>
    private const int MostAlways = 20_000;

    private (string Text, int Size, string Svg)? printed;
    private bool printing;

    /// <summary>Empty where the words were changed since it was drawn.</summary>
    private string ChartOnPaper => printed is { } drawn && drawn.Text == text && drawn.Size == ShownSize ? drawn.Svg : "";

    private bool IsForPaper => text.Length <= MostAlways || printed?.Text == text;

    /// <summary>Told by the browser: the key for printing.</summary>
    [JSInvokable]
    public Task PrintKey() => InvokeAsync(PrintAsync);

    private async Task PrintAsync()
    {
        if (printing || room is null || editor is null) return;
        printing = true;
        try
        {
            await editor.FlushAsync();
            (string words, int shown) = (text, ShownSize);
            CheckedPattern? known = answer?.Input.Text == words ? answer.Pattern : null;
            printed = (words, shown, await Task.Run(() => DrawForPaper(known ?? PatternCheck.Check(words), shown)));
            StateHasChanged();
            await room.InvokeVoidAsync("print");
        }
        finally
        {
            printing = false;
        }
    }

    private static string DrawForPaper(CheckedPattern pattern, int size) =>
        size >= pattern.Sizes.Count || pattern.Sizes[size].Fabric.IsEmpty ? "" : SvgPainter.Paint(Chart.Draw(pattern, size, OnPaper));

    private static ChartStyle OnPaper => new() { MostCells = MostOnPaper, LeftHanded = Manner.Of.LeftHanded, TellsFlatness = false };
}
