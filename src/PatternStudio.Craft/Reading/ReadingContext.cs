using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading;

/// <summary>What all readers of one text share: the text, its tokens, its terminology, its own stitch names, and the troubles met.</summary>
internal sealed class ReadingContext(SourceText source, Token[] tokens, Terminology terminology)
{
    private const int MostTroubles = 1000;
    private readonly List<ReadingTrouble> troubles = [];
    private readonly HashSet<(ReadingTroubleKind, TextSpan)> reported = [];
    private readonly HashSet<StitchId> groups = [];

    public SourceText Source { get; } = source;

    public Token[] Tokens { get; } = tokens;

    public Terminology Terminology { get; } = terminology;

    /// <summary>The index of the bracket that fits the one at an index; -1 where none does.</summary>
    public int[] Partners { get; } = Brackets.Match(tokens);

    /// <summary>Statements and definitions found so far.</summary>
    public Statements.FrontMatter Document { get; } = new();

    /// <summary>Names that the text itself defines.</summary>
    public NameTree OwnNames { get; } = new();

    /// <summary>The stitch names read last.</summary>
    public Rereading<StitchId?> Stitches { get; } = new();

    /// <summary>The places read last.</summary>
    public Rereading<Placement?> Places { get; } = new();

    /// <summary>The number of sizes that the text's size lists have; 1 where there are none.</summary>
    public int Sizes { get; set; } = 1;

    /// <summary>The names of the sizes, where the text lists as many as its numbers have.</summary>
    public IReadOnlyList<string> SizeNames => sizeNames ??= Statements.SizeNamesFinder.In(Source.Content, Sizes) ?? [];

    private IReadOnlyList<string>? sizeNames;

    /// <summary>The sizes that work the rows being read ('Sizes M and L only'); empty for all.</summary>
    public EquatableArray<int> OnlySizes { get; set; }

    /// <summary>The loops that the row being read is worked in ('working in back loops only').</summary>
    public LoopChoice RowLoop { get; set; }

    /// <summary>True while a line without a row heading is read: there 'Rep Row 2' stands for rows of its own.</summary>
    public bool LineHasNoHeading { get; set; }

    /// <summary>True while a 'Next row' is read: 'Next row: Rep Row 2 until piece measures 80 cm' stands for as many rows as that takes.</summary>
    public bool HeadingIsNext { get; set; }

    public IReadOnlyList<ReadingTrouble> Troubles => troubles;

    /// <summary>True where rows are headed by bare numbers.</summary>
    public bool HasBareHeadings { get; set; }

    /// <summary>How often a word stands in the text.</summary>
    public int TimesUsed(string word)
    {
        uses ??= Tokens.Where(token => token.Kind == TokenKind.Word).CountBy(token => token.Word).ToDictionary();
        return uses.GetValueOrDefault(word);
    }

    private Dictionary<string, int>? uses;

    /// <summary>What 'R1:' stands for: a row where the text turns, or speaks of rows, and has neither rounds nor a ring; else a round.</summary>
    public RowKind LetterKind => letterKind ??= (TimesUsed("turn") > 0 || TimesUsed("row") > 0) && !RoundWords.Any(word => TimesUsed(word) > 0) ? RowKind.Row : RowKind.Round;

    private static readonly string[] RoundWords = ["rnd", "ring", "mr", "magic", "mc", "spiral", "around"];
    private RowKind? letterKind;

    /// <summary>True where 'MC' is the magic circle ('6 sc in MC'): elsewhere in the text it would stand after other words than 'in', as a main colour does ('with MC').</summary>
    public bool McIsRing => mcIsRing ??= Enumerable.Range(0, Tokens.Length).All(i => !Tokens[i].IsWord("mc") || i > 0 && (Tokens[i - 1].IsWord("in") || i > 1 && Tokens[i - 1].IsWord("a") && Tokens[i - 2].IsWord("in")));

    private bool? mcIsRing;

    /// <summary>The index of the first token that starts at an offset or after it.</summary>
    public int TokenAt(int offset)
    {
        int low = 0, high = Tokens.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (Tokens[middle].Span.Start < offset) low = middle + 1;
            else high = middle;
        }
        return low;
    }

    /// <summary>Counts how deep readers call one another, brackets or not; false where it is deeper than any pattern needs.</summary>
    public bool Enter()
    {
        if (deep >= ReadingLimits.Nesting + 8) return false;
        deep++;
        return true;
    }

    public void Leave() => deep--;

    /// <summary>True while a list after a place given first is read: such lists do not hold one another.</summary>
    public bool InPlaceFirst { get; set; }

    private int deep;

    /// <summary>True where words at or after <paramref name="from"/>, before <paramref name="end"/>, repeat 'from' the mark.</summary>
    public bool RepeatsFrom(string mark, int from, int end)
    {
        repeatedMarks ??= FindRepeatedMarks();
        if (!repeatedMarks.TryGetValue(mark, out List<int>? places)) return false;
        int index = places.BinarySearch(from);
        if (index < 0) index = ~index;
        return index < places.Count && places[index] < end;
    }

    private Dictionary<string, List<int>>? repeatedMarks;

    private Dictionary<string, List<int>> FindRepeatedMarks()
    {
        var marks = new Dictionary<string, List<int>>(StringComparer.Ordinal);
        for (int i = 2; i < Tokens.Length; i++)
        {
            if (Tokens[i].Kind != TokenKind.Star || !(Tokens[i - 1].IsWord("from") || (Tokens[i - 2].IsWord("from") && !Tokens[i - 1].IsWord("to")))) continue;
            if (!marks.TryGetValue(Tokens[i].Word, out List<int>? places)) marks[Tokens[i].Word] = places = [];
            places.Add(i);
        }
        return marks;
    }

    public void Report(ReadingTroubleKind kind, string detail, TextSpan span)
    {
        if (troubles.Count < MostTroubles && reported.Add((kind, span))) troubles.Add(new ReadingTrouble(kind, detail, span));
    }

    /// <summary>Takes a stitch of the text's own into its vocabulary.</summary>
    public void Define(StitchId stitch, IEnumerable<string> names, bool isGroup)
    {
        foreach (string name in names) OwnNames.Add(name, stitch);
        if (isGroup) groups.Add(stitch);
        else groups.Remove(stitch);
        ownStitches.Add(stitch);
        Stitches.Forget();
        Places.Forget();
    }

    private readonly HashSet<StitchId> ownStitches = [];

    /// <summary>True where the name stands for several stitches in one place.</summary>
    public bool IsGroup(StitchId stitch) =>
        groups.Contains(stitch) || (!ownStitches.Contains(stitch) && Vocabulary.Standard.Find(stitch) is { IsGroup: true });

    /// <summary>How many places a stitch takes and how many stitches it makes, by its name.</summary>
    public static bool IsIncreaseOrDecrease(StitchId stitch) =>
        Vocabulary.Standard.Find(stitch) is { } term && (term.Takes != 1 || term.Makes != 1);
}
