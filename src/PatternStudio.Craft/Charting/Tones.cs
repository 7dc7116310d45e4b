using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>Gives rows their tones, so that neighbours can be told apart.</summary>
internal static class Tones
{
    /// <summary>Rows by the side that faces the maker; rounds, which all face the same way, by turns.</summary>
    public static RowTone Of(WorkedRow row, bool inRounds)
    {
        if (row.Kind == RowKind.Foundation) return RowTone.Foundation;
        if (row.Status != RowStatus.Checked) return RowTone.Gap;
        bool first = inRounds ? row.Number % 2 == 1 : row.Side == FabricSide.Right;
        return first ? RowTone.First : RowTone.Second;
    }

    /// <summary>True for a piece that begins in rounds, or of which only the ring is there yet.</summary>
    public static bool InRounds(WorkedPiece piece) =>
        piece.Rows.FirstOrDefault(row => row.Kind != RowKind.Foundation) is { } first ? first.Kind == RowKind.Round : !piece.Rows.IsEmpty && piece.Rows[0] is { Joined: true } or { IsMagicRing: true };

    /// <summary>What the tones of a drawing mean.</summary>
    public static EquatableArray<ToneMeaning> Meanings(IReadOnlyCollection<DrawnRow> rows, bool inRounds) =>
        rows.Select(row => row.Tone).Distinct().Order().Select(tone => new ToneMeaning(tone, Meaning(tone, inRounds))).ToEquatableArray();

    private static string Meaning(RowTone tone, bool inRounds) => tone switch
    {
        RowTone.Foundation => inRounds ? "centre" : "foundation",
        RowTone.First => inRounds ? "odd rounds" : "right-side rows",
        RowTone.Second => inRounds ? "even rounds" : "wrong-side rows",
        _ => "rows not drawn",
    };
}
