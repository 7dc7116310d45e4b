using PatternStudio.Studio.Designs.Comparing;

namespace PatternStudio.Studio.Tests;

/// <summary>What two have written from the same words is put together where they changed different lines.</summary>
public sealed class MergeTests
{
    private const string Basis = "Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\nRow 2: Ch 1, turn, sc in each sc across. (10 sc)\nFasten off.";

    [Fact]
    public void Different_lines_are_put_together()
    {
        string theirs = Basis.Replace("Fasten off.", "Fasten off. Weave in.", StringComparison.Ordinal);
        string mine = Basis.Replace("Ch 11.", "With the smaller hook, ch 11.", StringComparison.Ordinal);

        Assert.Equal(
            "With the smaller hook, ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\nRow 2: Ch 1, turn, sc in each sc across. (10 sc)\nFasten off. Weave in.",
            WordsMerge.Together(Basis, theirs, mine));
    }

    [Fact]
    public void The_same_line_changed_by_both_is_left_to_them()
    {
        string theirs = Basis.Replace("Fasten off.", "Fasten off. Block.", StringComparison.Ordinal);
        string mine = Basis.Replace("Fasten off.", "Fasten off. Weave in.", StringComparison.Ordinal);
        Assert.Null(WordsMerge.Together(Basis, theirs, mine));
    }

    [Fact]
    public void Neighbouring_rows_changed_by_two_are_put_together() =>
        Assert.Equal("Row 1: a\nRow 2: B\nRow 3: C\nRow 4: d", WordsMerge.Together("Row 1: a\nRow 2: b\nRow 3: c\nRow 4: d", "Row 1: a\nRow 2: B\nRow 3: c\nRow 4: d", "Row 1: a\nRow 2: b\nRow 3: C\nRow 4: d"));

    [Fact]
    public void Rows_added_by_both_at_one_place_are_left_to_them() =>
        Assert.Null(WordsMerge.Together("Row 1: a\nFasten off.", "Row 1: a\nRow 2: b\nFasten off.", "Row 1: a\nRow 2: c\nFasten off."));

    [Fact]
    public void What_both_changed_alike_is_there_once() =>
        Assert.Equal("Row 1: A\nRow 2: b\nRow 3: C", WordsMerge.Together("Row 1: a\nRow 2: b\nRow 3: c", "Row 1: A\nRow 2: b\nRow 3: c", "Row 1: A\nRow 2: b\nRow 3: C"));

    /// <summary>A stretch of blank lines is one line shorter, whichever of them an editor took away.</summary>
    [Fact]
    public void One_of_several_lines_alike_removed_by_both_is_removed_once() =>
        Assert.Equal("Row 1 of mine\nRow 2\n\nFasten off.", WordsMerge.Together("Row 1\nRow 2\n\n\nFasten off.", "Row 1\nRow 2\n\nFasten off.", "Row 1 of mine\nRow 2\n\nFasten off."));

    /// <summary>Everything two can do to each of three lines: leave it, change it, remove it, add one after it.</summary>
    [Fact]
    public void Whatever_is_put_together_is_what_both_did_line_by_line()
    {
        int[][] deeds = [.. from a in Enumerable.Range(0, 4) from b in Enumerable.Range(0, 4) from c in Enumerable.Range(0, 4) select new[] { a, b, c }];
        foreach (int[] theirs in deeds)
        {
            foreach (int[] mine in deeds) Judge(theirs, mine);
        }
    }

    private static void Judge(int[] theirs, int[] mine)
    {
        string[] basis = ["first", "second", "third"];
        string told = $"{string.Join('/', theirs)} and {string.Join('/', mine)}";
        string? merged = WordsMerge.Together(string.Join('\n', basis), Done(basis, theirs, "theirs"), Done(basis, mine, "mine"));
        Assert.True(merged == WordsMerge.Together(string.Join('\n', basis), Done(basis, mine, "mine"), Done(basis, theirs, "theirs")), $"{told}: depends on who was first");
        bool bothAtOneLine = theirs.Zip(mine).Any(pair => pair.First > 0 && pair.Second > 0);
        bool neighbours = Enumerable.Range(0, 2).Any(i => (theirs[i] > 0 && mine[i + 1] > 0) || (mine[i] > 0 && theirs[i + 1] > 0));
        if (merged is null)
        {
            Assert.True(bothAtOneLine || neighbours, $"{told}: could have been put together");
            return;
        }

        var expected = new List<string>();
        for (int i = 0; i < basis.Length; i++)
        {
            (string Whose, int Deed)[] both = [("theirs", theirs[i]), ("mine", mine[i])];
            Assert.False(theirs[i] == Changed && mine[i] is Changed or Removed || mine[i] == Changed && theirs[i] == Removed, $"{told}: decided by nobody");
            if (both.All(one => one.Deed is Left or Added)) expected.Add(basis[i]);
            expected.AddRange(both.Where(one => one.Deed == Changed).Select(one => $"{basis[i]} {one.Whose}"));
            expected.AddRange(both.Where(one => one.Deed == Added).Select(one => $"after {basis[i]} {one.Whose}"));
        }

        // A line added after one and a line in the place of the next stand at the same place: which is above is nobody's word.
        Assert.Equal(expected.DefaultIfEmpty("").Order(), merged.Split('\n').Order());
        Assert.Equal(expected.Where(basis.Contains), merged.Split('\n').Where(basis.Contains));
    }

    private const int Left = 0, Changed = 1, Removed = 2, Added = 3;

    private static string Done(string[] basis, int[] deeds, string whose) =>
        string.Join('\n', basis.Zip(deeds).SelectMany(line => line.Second switch
        {
            Changed => [$"{line.First} {whose}"],
            Removed => [],
            Added => [line.First, $"after {line.First} {whose}"],
            _ => (string[])[line.First],
        }));
}
