using Microsoft.AspNetCore.Components;

namespace PatternStudio.Web.Features.Desk;

/// <summary>The row schedule: every row as worked, its stated count, and the yarn used up to it.</summary>
public sealed partial class RowTable
{
    /// <summary>So many rows are shown at first: a blanket has more than anybody reads at once.</summary>
    public const int ShownAtFirst = 250;

    private bool all;

    [Parameter, EditorRequired]
    public IReadOnlyList<RowLine> Lines { get; set; } = [];

    /// <summary>How counts go on over repeated rows, in sentences.</summary>
    [Parameter]
    public IReadOnlyList<string> Laws { get; set; } = [];

    /// <summary>The line of the words in which the cursor stands, 1-based; its rows stand out.</summary>
    [Parameter]
    public int? CaretLine { get; set; }

    /// <summary>Working time of everything made; null where not known.</summary>
    [Parameter]
    public double? Minutes { get; set; }

    /// <summary>The designer wants the schedule as a file.</summary>
    [Parameter]
    public EventCallback Download { get; set; }

    /// <summary>The ball in use is told where there is more than one.</summary>
    private bool ShowsBalls => Lines.Select(line => line.Takes?.Balls).Distinct().Take(2).Count() > 1;

    private bool HasTime => Minutes is not null;

    /// <summary>The reader wants to see the words of a row: 1-based line.</summary>
    [Parameter]
    public EventCallback<int> Go { get; set; }

    private IReadOnlyList<RowLine> Shown => all || Lines.Count <= ShownAtFirst ? Lines : [.. Lines.Take(ShownAtFirst)];

    private void ShowAll() => all = true;

    private bool StartsPiece(int index) =>
        Lines[index].Row.Piece.Length > 0 && (index == 0 || Lines[index - 1].Row.Piece != Lines[index].Row.Piece);

    private static string ChangeWords(long? change) => change switch
    {
        null => "",
        0 => "±0",
        > 0 => $"+{Shell.Numbers.Count(change.Value)}",
        _ => $"−{Shell.Numbers.Count(-change.Value)}",
    };
}
