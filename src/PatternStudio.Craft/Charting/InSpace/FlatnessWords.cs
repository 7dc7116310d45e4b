namespace PatternStudio.Craft.Charting.InSpace;

/// <summary>Tells a maker whether the fabric lies flat.</summary>
internal static class FlatnessWords
{
    public static string Tell(IReadOnlyList<RoundFlatness> rounds)
    {
        RoundFlatness? begins = rounds.FirstOrDefault(round => round.Shape is Shape3.Cupped or Shape3.Ruffled);
        if (begins is null) return "It lies flat.";
        string what = begins.Shape == Shape3.Cupped ? "rises to a bowl" : "ruffles";
        string until = begins == rounds[0] ? "" : $"lies flat up to {rounds[rounds.ToList().IndexOf(begins) - 1].Label} and ";
        return $"It {until}{what} from {begins.Label} on: {begins.Label} has {begins.Stitches} stitches, {Math.Round(begins.Flat)} would lie flat ({Change(begins.Change)}).";
    }

    private static string Change(long change) => change > 0 ? $"{change} more" : $"{-change} fewer";
}
