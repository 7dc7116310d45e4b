namespace PatternStudio.Craft.Tests.Properties;

/// <summary>One stitch of a row as a person with a pencil would list it.</summary>
/// <param name="Name">Stitch; 'ch' for a chain space.</param>
/// <param name="Chains">Chains of a space, else 0.</param>
/// <param name="Feet">Places in the row below that it stands in, in the order that row was worked.</param>
internal sealed record PencilStitch(string Name, int Chains, params int[] Feet)
{
    public bool IsSpace => Chains > 0;
}

/// <summary>One move of an instruction: its words, the places that it takes from the row below, and what it makes.</summary>
/// <param name="Words">As written.</param>
/// <param name="Takes">Stitches of the row below that it takes.</param>
/// <param name="Make">The stitches made, given the places taken.</param>
internal sealed record Move(string Words, int Takes, Func<int[], IEnumerable<PencilStitch>> Make)
{
    public static Move Plain(string stitch, int times) => times == 1
        ? new($"{stitch} in next st", 1, at => [new(stitch, 0, at[0])])
        : new($"{stitch} in each of next {times} sts", times, at => at.Select(place => new PencilStitch(stitch, 0, place)));

    public static Move Increase(string stitch, int times) =>
        new($"{times} {stitch} in next st", 1, at => Enumerable.Repeat(new PencilStitch(stitch, 0, at[0]), times));

    public static Move Together(string stitch) =>
        new($"{stitch}2tog over next 2 sts", 2, at => [new(stitch + "2tog", 0, at[0], at[1])]);

    public static Move ChainOver(int chains, int skipped) => new(
        $"ch {chains}, sk next {(skipped == 1 ? "st" : $"{skipped} sts")}", skipped, _ => [new("ch", chains)]);

    public static Move Skip(int skipped) => new($"sk next {(skipped == 1 ? "st" : $"{skipped} sts")}", skipped, _ => []);

    public static Move VStitch(string stitch) =>
        new($"({stitch}, ch 1, {stitch}) in next st", 1, at => [new(stitch, 0, at[0]), new("ch", 1), new(stitch, 0, at[0])]);
}

/// <summary>
/// A row's instruction, and a deliberately plain way to work it: go along the list of stitches below, one by one, and write down what is made.
/// Chain spaces of the row below are passed over: every move here names stitches.
/// </summary>
/// <param name="Before">Moves before the repeat.</param>
/// <param name="Unit">Moves of the repeat; empty for none.</param>
/// <param name="Times">Turns; 0 for 'to the end', less what the moves behind need.</param>
/// <param name="After">Moves behind the repeat.</param>
internal sealed record RightRow(IReadOnlyList<Move> Before, IReadOnlyList<Move> Unit, int Times, IReadOnlyList<Move> After)
{
    /// <summary>The stitches made on a row below; null where the instruction does not come out even on it.</summary>
    /// <param name="below">The row below in the order worked.</param>
    /// <param name="turned">True where it is met from its end.</param>
    public IReadOnlyList<PencilStitch>? WorkOn(IReadOnlyList<PencilStitch> below, bool turned)
    {
        var places = new Queue<int>(Enumerable.Range(0, below.Count).Where(place => !below[place].IsSpace));
        if (turned) places = new Queue<int>(places.Reverse());
        var made = new List<PencilStitch>();
        int needed = After.Sum(move => move.Takes), turns = 0;
        bool Do(IEnumerable<Move> moves)
        {
            foreach (Move move in moves)
            {
                if (places.Count < move.Takes) return false;
                made.AddRange(move.Make([.. Enumerable.Range(0, move.Takes).Select(_ => places.Dequeue())]));
            }
            return true;
        }
        if (!Do(Before)) return null;
        while (Unit.Count > 0 && (Times > 0 ? turns < Times : places.Count > needed))
        {
            turns++;
            if (!Do(Unit)) return null;
        }
        return Do(After) && places.Count == 0 ? made : null;
    }
}
