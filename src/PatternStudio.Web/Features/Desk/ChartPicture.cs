using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;
using PatternStudio.Publishing.Scenes;

namespace PatternStudio.Web.Features.Desk;

/// <summary>What is to be drawn.</summary>
/// <param name="Pattern">The words as read and worked.</param>
/// <param name="Size">0-based.</param>
/// <param name="Schedule">The measures of that size; null where nothing was measured yet.</param>
public sealed record ChartWish(CheckedPattern Pattern, int Size, Measured<RowSchedule>? Schedule, string Title, ChartChoice Choice)
{
    /// <summary>The yarns of the pattern's colours.</summary>
    public EquatableArray<YarnColour> Yarns { get; init; } = [];

    /// <summary>True where the other wish gives the same picture.</summary>
    public bool SameAs(ChartWish? other) =>
        other is not null && (Size, Title, Choice) == (other.Size, other.Title, other.Choice) && (!Choice.InColour || Yarns == other.Yarns)
        && (ReferenceEquals(Pattern, other.Pattern) || (!Choice.Outline && Pattern.Pattern.Source.Content == other.Pattern.Pattern.Source.Content));
}

/// <summary>A drawing and what the browser needs of it.</summary>
/// <param name="Drawing">Null where there is nothing to draw.</param>
/// <param name="Scene">The drawing for the canvas; empty for an outline, which is shown as it is.</param>
/// <param name="Why">Why there is no drawing; empty where there is one.</param>
public sealed record ChartPicture(ChartWish Wish, Drawing? Drawing, byte[] Scene, string Why)
{
    /// <summary>Draws. Long with large pieces: not to be called where somebody waits.</summary>
    public static ChartPicture Draw(ChartWish wish)
    {
        if (wish.Choice.Outline) return Outline(wish);
        Fabric fabric = wish.Pattern.Sizes[wish.Size].Fabric;
        if (fabric.IsEmpty) return new ChartPicture(wish, null, [], "");
        Drawing drawing = Chart.Draw(wish.Pattern, wish.Size, wish.Choice.ToStyle(wish.Title, wish.Yarns));
        return new ChartPicture(wish, drawing, ScenePainter.Paint(drawing, fabric), "");
    }

    private static ChartPicture Outline(ChartWish wish)
    {
        if (wish.Schedule is not { IsKnown: true } schedule) return new ChartPicture(wish, null, [], wish.Schedule?.Trace ?? "");
        PieceSchedule[] pieces = [.. schedule.Value.Pieces.Where((_, i) => (wish.Choice.Piece ?? i) == i)];
        string why = string.Join(' ', pieces.Select(piece => piece.Width.IsKnown ? piece.Height.Trace : piece.Width.Trace).Distinct());
        Drawing? drawing = Schematic.Draw(schedule.Value with { Pieces = [.. pieces] });
        return new ChartPicture(wish, drawing is null ? null : drawing with { Title = $"{wish.Title}, {char.ToLowerInvariant(drawing.Title[0])}{drawing.Title[1..]}" }, [], drawing is null ? why : "");
    }
}
