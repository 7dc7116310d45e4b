namespace PatternStudio.Craft.Measuring;

/// <summary>What a swatch counts, as it is read: so many across, so many up.</summary>
internal sealed class SwatchCounts
{
    public double? Across { get; set; }

    public double? Up { get; private set; }

    /// <summary>Stitches that all repeats across are, where said in brackets.</summary>
    public double? InRepeats { get; set; }

    public SwatchKind Kind { get; private set; }

    public bool IsRepeats => Kind == SwatchKind.Repeats;

    public double? PerRepeat => IsRepeats && InRepeats > 0 && Across > 0 ? InRepeats / Across : null;

    public static bool IsStitches(string word) => word is "st" or "sts" or "stitch" or "stitches";

    public static bool IsRows(string word) => word is "row" or "rows" or "r" or "rnd" or "rnds" or "round" or "rounds";

    public static bool IsTiles(string word) => word is "tile" or "tiles" or "block" or "blocks";

    /// <summary>Takes a count; false where the word is no unit of counting and so names a stitch.</summary>
    public bool Take(double number, string word)
    {
        if (IsRows(word)) Up = number;
        else if (IsStitches(word)) Across = number;
        else if (IsTiles(word)) TakeTiles(number, number);
        else if (word is "repeat" or "repeats" or "rep" or "reps" or "patt" or "pattern") (Across, Kind) = (number, SwatchKind.Repeats);
        else return false;
        return true;
    }

    public void TakeTiles(double across, double up) => (Across, Up, Kind) = (across, up, SwatchKind.Tiles);
}
