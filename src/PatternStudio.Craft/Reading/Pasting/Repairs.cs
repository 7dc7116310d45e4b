using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Pasting;

/// <summary>Writes down what was repaired while a text is tidied.</summary>
internal sealed class Repairs
{
    /// <summary>So many dropped lines of a kind are shown; the rest are counted.</summary>
    private const int MostLines = 6;

    private readonly SortedDictionary<RepairKind, (int Count, List<string> Lines)> made = [];

    public void Note(RepairKind kind, int count = 1)
    {
        if (count == 0) return;
        (int before, List<string> lines) = made.GetValueOrDefault(kind, (0, []));
        made[kind] = (before + count, lines);
    }

    public void Drop(RepairKind kind, string line)
    {
        Note(kind);
        if (made[kind].Lines.Count < MostLines) made[kind].Lines.Add(line.Trim());
    }

    public EquatableArray<TextRepair> All() =>
        made.Select(repair => new TextRepair(repair.Key, repair.Value.Count, repair.Value.Lines.ToEquatableArray())).ToEquatableArray();
}
