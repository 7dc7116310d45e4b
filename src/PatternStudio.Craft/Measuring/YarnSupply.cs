using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>Yarn that is at hand: a lot of one colour, weighed.</summary>
/// <param name="Colour">The colour of the pattern that it is meant for; empty for the only one.</param>
/// <param name="Weight">What is left of it; 0 or more.</param>
/// <param name="Label">Its ball band.</param>
/// <param name="DyeLot">As the band prints it; empty where not known.</param>
public sealed record YarnLot(string Colour, Mass Weight, YarnLabel Label, string DyeLot = "")
{
    /// <summary>The length of what is left.</summary>
    public YarnLength Length => Label.LengthOf(Weight);
}

/// <summary>Whether yarn at hand is enough.</summary>
public enum SupplyVerdict
{
    /// <summary>For 90 makers of 100.</summary>
    Enough,

    /// <summary>For what is expected, but not for 90 makers of 100.</summary>
    Tight,

    /// <summary>Not for what is expected.</summary>
    NotEnough,
}

/// <summary>One colour's need beside what is at hand.</summary>
/// <param name="Colour">As the pattern names it.</param>
/// <param name="Used">Expected.</param>
/// <param name="Sure">What 90 makers of 100 won't exceed.</param>
/// <param name="AtHand">All lots of it.</param>
/// <param name="Verdict">Their comparison.</param>
/// <param name="DyeLots">Names of its dye lots where more than one must be used; else empty.</param>
public sealed record ColourSupply(string Colour, YarnLength Used, YarnLength Sure, YarnLength AtHand, SupplyVerdict Verdict, EquatableArray<string> DyeLots)
{
    /// <summary>What to add so that 90 makers of 100 have enough; zero where nothing.</summary>
    public YarnLength Missing => Sure > AtHand ? Sure - AtHand : YarnLength.Zero;

    /// <summary>What is left over of what is expected; zero where nothing.</summary>
    public YarnLength LeftOver => AtHand > Used ? AtHand - Used : YarnLength.Zero;
}

/// <summary>Where the yarn at hand ends, as expected.</summary>
/// <param name="Piece">The piece's name; empty where it has none.</param>
/// <param name="Copy">Which of them, from 1, where it is made several times.</param>
/// <param name="LastRow">The last row that can be finished; null where not even the first.</param>
/// <param name="Colour">The colour that runs out in the row after it.</param>
public sealed record SupplyEnd(string Piece, int Copy, string? LastRow, string Colour);

/// <summary>'Can I make this from so much yarn?'</summary>
/// <param name="Verdict">The worst of the colours'.</param>
/// <param name="Colours">In the pattern's order.</param>
/// <param name="End">Where it runs out, as expected; null where it lasts.</param>
/// <param name="Warnings">Sentences: dye lots that mix, lots of no colour of the pattern.</param>
public sealed record SupplyAnswer(SupplyVerdict Verdict, EquatableArray<ColourSupply> Colours, SupplyEnd? End, EquatableArray<string> Warnings);

/// <summary>Compares a pattern's need with yarn at hand. Pure: what a cupboard holds is the caller's.</summary>
public static class YarnSupply
{
    /// <summary>What differs by less is the same length.</summary>
    private const double Rounding = 1e-9;

    /// <summary>Asks whether a pattern can be made from lots; not known where its yarn is not.</summary>
    public static Measured<SupplyAnswer> Ask(RowSchedule schedule, IReadOnlyList<YarnLot> lots)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        ArgumentNullException.ThrowIfNull(lots);
        if (!schedule.Yarn.IsKnown) return Measured.NotKnown<SupplyAnswer>(schedule.Yarn.Trace);
        YarnNeed need = schedule.Yarn.Value;
        bool any = need.Colours.Count == 1;
        ColourSupply[] colours = [.. need.Colours.Select(colour => Of(colour, [.. lots.Where(lot => any || IsOf(lot, colour.Colour))]))];
        var atHand = colours.ToDictionary(colour => colour.Colour, colour => colour.AtHand);
        SupplyVerdict worst = colours.Length == 0 ? SupplyVerdict.Enough : colours.Max(colour => colour.Verdict);
        IEnumerable<string> strangers = any ? [] : lots.Where(lot => !need.Colours.Any(colour => IsOf(lot, colour.Colour))).Select(lot => $"The pattern has no colour '{lot.Colour}', so {lot.Weight} of it were not counted.");
        EquatableArray<string> warnings = colours.Where(colour => !colour.DyeLots.IsEmpty).Select(Mixed).Concat(strangers).ToEquatableArray();
        return Measured.Known(new SupplyAnswer(worst, colours.ToEquatableArray(), End(schedule, atHand), warnings), schedule.Yarn.Trace);
    }

    private static bool IsOf(YarnLot lot, string colour) => string.Equals(lot.Colour.Trim(), colour, StringComparison.OrdinalIgnoreCase);

    private static ColourSupply Of(ColourNeed need, YarnLot[] lots)
    {
        YarnLength atHand = YarnNeed.Sum(lots.Select(lot => lot.Length));
        SupplyVerdict verdict = Covers(atHand, need.Buy) ? SupplyVerdict.Enough : Covers(atHand, need.Used) ? SupplyVerdict.Tight : SupplyVerdict.NotEnough;
        return new ColourSupply(need.Colour, need.Used, need.Buy, atHand, verdict, DyeLots(lots, need.Used));
    }

    private static bool Covers(YarnLength atHand, YarnLength needed) => atHand.Metres >= needed.Metres - Rounding;

    /// <summary>Dye lots that must be mixed because none of them is enough alone; lots of unknown dye count as lots of their own.</summary>
    private static EquatableArray<string> DyeLots(YarnLot[] lots, YarnLength needed)
    {
        YarnLength[] each = [.. lots.GroupBy(lot => lot.DyeLot.Trim(), StringComparer.OrdinalIgnoreCase).Select(same => YarnNeed.Sum(same.Select(lot => lot.Length)))];
        string[] names = [.. lots.Select(lot => lot.DyeLot.Trim()).Distinct(StringComparer.OrdinalIgnoreCase)];
        return names.Length > 1 && !Array.Exists(each, length => Covers(length, needed)) ? names.ToEquatableArray() : [];
    }

    private static string Mixed(ColourSupply colour)
    {
        string of = colour.Colour.Length > 0 ? $" of {colour.Colour}" : "";
        return $"No dye lot{of} is enough alone ({string.Join(", ", colour.DyeLots.Select(name => name.Length > 0 ? name : "not known"))}). Dye lots differ in shade: change them between sections, or work two rows of each in turn.";
    }

    private static SupplyEnd? End(RowSchedule schedule, Dictionary<string, YarnLength> atHand)
    {
        var before = new Dictionary<string, YarnLength>();
        foreach (PieceSchedule piece in schedule.Pieces)
            for (int copy = 1; copy <= piece.Made; copy++)
            {
                if (End(piece, copy, before, atHand) is { } end) return end;
                foreach (ColourYarn colour in piece.Colours) before[colour.Colour] = before.GetValueOrDefault(colour.Colour) + colour.Length;
            }

        return null;
    }

    private static SupplyEnd? End(PieceSchedule piece, int copy, Dictionary<string, YarnLength> before, Dictionary<string, YarnLength> atHand)
    {
        // A piece that the yarn covers whole need not be walked: a pattern may ask for a thousand of it.
        if (piece.Colours.All(colour => Covers(atHand.GetValueOrDefault(colour.Colour), before.GetValueOrDefault(colour.Colour) + colour.Length))) return null;
        string? last = null;
        foreach (ScheduledRow row in piece.Rows)
        {
            foreach (ColourYarn colour in row.ColourTotals)
                if (!Covers(atHand.GetValueOrDefault(colour.Colour), before.GetValueOrDefault(colour.Colour) + colour.Length))
                    return new SupplyEnd(piece.Name, copy, last, colour.Colour);
            last = row.Heading;
        }

        return null;
    }
}
