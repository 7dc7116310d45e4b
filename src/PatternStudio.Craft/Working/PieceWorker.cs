using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Works the rows of one piece, each into the one below. This part goes through the piece's entries; others work a row and repeat rows.</summary>
internal sealed partial class PieceWorker
{
    /// <summary>More rows than any piece has.</summary>
    private const int MostRows = 20_000;

    /// <summary>No row begins with so many chains to turn: they are a foundation.</summary>
    private const int LongChain = 25;

    private readonly WorkContext context;
    private readonly WorkedRows rows = [];
    private readonly List<Mishap> mishaps = [];
    private readonly RowsByNumber byNumber = new();
    private readonly HashSet<(MishapKind, TextSpan)> reported = [];
    private readonly WorkMemo memo = new();
    private readonly HashSet<RowInstruction> failed = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<RowInstruction, RowInstruction> byInstruction = new(ReferenceEqualityComparer.Instance);
    private RowInstruction? everyOther;
    private Ground? ground;
    private EquatableArray<Step> carried;
    private bool turnsNext;
    private bool staysNext;
    private string colour = "";
    private int lastNumber;
    private string section = "";
    private bool sectionBegins;
    private int sectionStart;
    private bool afterUnlabelled;
    private bool afterUnread;
    private bool turnsAfter;
    private long startAt;
    private int skippedTo;
    private TextSpan? full;

    /// <param name="context">What holds for the whole pattern.</param>
    public PieceWorker(WorkContext context) => this.context = context;

    public WorkedRows Rows => rows;

    public IReadOnlyList<Mishap> Mishaps => mishaps;

    /// <summary>Works a section onto what is there.</summary>
    public void Work(Piece piece)
    {
        section = piece.Name;
        sectionBegins = true;
        sectionStart = rows.Count;
        WorkItems(piece.Items);
    }

    private void WorkItems(IEnumerable<PieceItem> items)
    {
        PieceItem[] all = [.. InOrder(items.Where(IsForThisSize))];
        for (int i = 0; i < all.Length; i++)
        {
            PieceItem item = all[i];
            if (IsFull(item.Span)) break;
            switch (item)
            {
                case RowInstruction row:
                    WorkInstruction(row);
                    rowsInCycle = 0;
                    break;
                case WorkAsPiece other:
                    WorkItems(ItemsOf(context.Pattern, other));
                    break;
                case RepeatRows repeat:
                    Repeat(UpToRowAhead(repeat, all.Skip(i + 1)));
                    break;
                case ContinueInWay onward:
                    Continue(onward, all.Skip(i + 1).OfType<RowInstruction>().FirstOrDefault());
                    break;
                case Passage passage:
                    afterUnlabelled = passage.Text.Length > 20;
                    afterUnread |= !passage.IsRemark;
                    break;
                default:
                    break;
            }
            if (item is not Passage) afterUnlabelled = item is RowInstruction { Heading.Numbering: RowNumbering.None };
        }
    }

    /// <summary>'Sizes M and L only': the numbers of rows that other sizes work are no gap in the numbers of this one.</summary>
    private bool IsForThisSize(PieceItem item)
    {
        if (item.OnlySizes.IsEmpty || item.OnlySizes.Contains(context.Size)) return true;
        if (item is RowInstruction row) skippedTo = Math.Max(skippedTo, (row.Heading.Last is { } last && row.Heading.Numbering == RowNumbering.Range ? last.For(context.Size) : row.Heading.Numbers.IsEmpty ? null : row.Heading.Numbers[^1]) ?? 0);
        return false;
    }

    /// <summary>True where no more rows are worked. That more are asked for than any piece has is told, at the words that do.</summary>
    private bool IsFull(TextSpan askedBy)
    {
        if (context.IsBeaten) return true;
        if (rows.Count <= MostRows) return false;
        Report(new Mishap(MishapKind.TooLarge, full ??= askedBy) { Wanted = MostRows });
        return true;
    }

    /// <summary>'15, 17.' and then '16, 18.': rows listed with gaps are worked in the order of their numbers.</summary>
    private static IEnumerable<PieceItem> InOrder(IEnumerable<PieceItem> items)
    {
        PieceItem[] all = [.. items];
        for (int i = 0; i < all.Length; i++)
        {
            if (all[i] is RowInstruction first && i + 1 < all.Length && all[i + 1] is RowInstruction second && Interleave(first, second))
            {
                foreach ((int number, RowInstruction row) in first.Heading.Numbers.Select(n => (n, first)).Concat(second.Heading.Numbers.Select(n => (n, second))).OrderBy(numbered => numbered.Item1))
                    yield return row with { Heading = row.Heading with { Numbers = [number] } };
                i++;
            }
            else yield return all[i];
        }
    }

    private static bool Interleave(RowInstruction first, RowInstruction second) =>
        first.Heading is { Numbering: RowNumbering.Listed, Numbers: { Count: > 1 } one } && second.Heading is { Numbering: RowNumbering.Listed, Numbers: { Count: > 1 } other }
        && other[0] == one[0] + 1 && one.Count == other.Count && one[1] == other[0] + 1 && !first.Steps.IsEmpty;

    /// <summary>True where a section begins a fabric of its own: with a chain to work into, or with a ring.</summary>
    public static bool BeginsAnew(Pattern pattern, Piece piece) =>
        piece.Items.FirstOrDefault(item => item is RowInstruction or WorkAsPiece) is { } opening
        && (opening is WorkAsPiece other ? ItemsOf(pattern, other).FirstOrDefault(item => item is RowInstruction) : opening) is RowInstruction first
        && (first.Heading.Kind == RowKind.Foundation || BeginsWithFoundation(first.Steps) && IsFoundationRow(first));

    /// <summary>'Work as for Back to end of Row 24': that piece's entries, up to that row.</summary>
    private static IEnumerable<PieceItem> ItemsOf(Pattern pattern, WorkAsPiece other)
    {
        Piece? named = pattern.Pieces.FirstOrDefault(piece => piece.Name.Equals(other.Piece, StringComparison.OrdinalIgnoreCase))
            ?? pattern.Pieces.FirstOrDefault(piece => piece.Name.Contains(other.Piece, StringComparison.OrdinalIgnoreCase));
        return named is null ? [] : named.Items.Where(item => item is not WorkAsPiece)
            .TakeWhile(item => other.ThroughRow is null || item is not RowInstruction row || FirstNumber(row, 0) is not { } number || number <= other.ThroughRow);
    }

    private static int? FirstNumber(RowInstruction row, int size) =>
        row.Heading.Numbering == RowNumbering.Listed && !row.Heading.Numbers.IsEmpty ? row.Heading.Numbers[0] : row.Heading.First?.For(size);

    private static bool IsFoundationRow(RowInstruction row) =>
        row.Steps.FirstOrDefault(IsWork) is not ChainStep
        || row.Steps.Any(step => step is StitchStep { Where.Choice: PlaceChoice.FromHook or PlaceChoice.InRing } or GroupStep { Where.Choice: PlaceChoice.InRing } or JoinStep { FormsRing: true } or WorkAlongStep { Along.Choice: PlaceChoice.FromHook })
        || row.Steps.FirstOrDefault(IsWork) is ChainStep { Count: { IsPlain: true } long_ } && long_.Values[0] >= LongChain
        || row.Steps.All(step => step is ChainStep or RemarkStep or ColourStep or JoinStep || ClosesRing(step));

    /// <summary>'Ch 6, sl st in the first ch', with nothing else: a ring.</summary>
    private static bool ClosesRing(Step step) =>
        step is StitchStep { Count: null, Where: { Choice: PlaceChoice.First, Kind.Noun: PlaceNoun.Chain } } join && join.Stitch == Terms.StitchId.SlipStitch;

    /// <summary>'Ch 2 (does not count as a stitch), hdc in each st around': a chain to turn, whatever is below.</summary>
    private static bool BeginsWithTurningChain(RowInstruction row) => row.Steps.FirstOrDefault(IsWork) is ChainStep { Role: not ChainRole.Unstated } && !IsFoundationRow(row);

    private void WorkInstruction(RowInstruction row)
    {
        switch (row.Heading.Numbering)
        {
            case RowNumbering.Listed:
                foreach (int number in row.Heading.Numbers) WorkNumbered(number, row);
                break;
            case RowNumbering.Range:
                int first = row.Heading.First?.For(context.Size) ?? lastNumber + 1, last = row.Heading.Last?.For(context.Size) ?? first;
                var repeat = new Repeating(row.Stated is { PerRow: true } ? 0 : Period(row));
                for (int number = first; number <= last && !IsFull(row.Span); number++)
                {
                    WorkNumbered(number, row);
                    number += ComeRound(repeat, last - number);
                }
                break;
            case RowNumbering.Next:
                int count = row.Heading.Last is { } stated ? stated.For(context.Size) ?? 0 : 1;
                for (int i = 0; i < count && !IsFull(row.Span); i++) WorkRow(lastNumber + 1, row, row.Span);
                break;
            case RowNumbering.EveryOther:
                everyOther = row;
                WorkNumbered(row.Heading.Numbers.IsEmpty ? lastNumber + 1 : row.Heading.Numbers[0], row);
                break;
            default:
                WorkUnlabelled(row);
                break;
        }
    }

    private void WorkUnlabelled(RowInstruction row)
    {
        if (rows.Any(IsWorked) && BeginsPart(row)) StartAgain(row);
        if (row.Heading.Kind != RowKind.Foundation && rows.Any(IsWorked) && (row.Steps.All(IsFinishing) || row.Steps.Any(IsAssembly))) return;
        if (row.Heading.Kind != RowKind.Foundation)
        {
            WorkRow(lastNumber + 1, row, row.Span);
            return;
        }
        EquatableArray<Step> rest = LayFoundation(row, row.Steps);
        if (rest.Any(step => step is StitchStep or GroupStep or RepeatStep)) WorkRow(lastNumber + 1, row with { Steps = rest, Heading = row.Heading with { Kind = RowKind.Row } }, row.Span);
        else carried = rest.Where(step => step is ColourStep).ToEquatableArray();
    }

    private static bool IsWorked(WorkedRow row) => row.Kind != RowKind.Foundation;

    /// <summary>'Fold flat, sc through both layers': putting together what is worked.</summary>
    private static bool IsAssembly(Step step) =>
        step is RemarkStep remark && (remark.Text.Contains("fold", StringComparison.OrdinalIgnoreCase) || remark.Text.Contains("layers", StringComparison.OrdinalIgnoreCase));

    /// <summary>'Sl st in next st. Fasten off.': how a piece is finished off, no row of its own.</summary>
    private static bool IsFinishing(Step step) =>
        step is FastenOffStep or JoinStep or RemarkStep or MarkerStep || step is StitchStep slip && slip.Stitch == StitchId.SlipStitch && slip.Where?.Choice is not PlaceChoice.Each;

    /// <summary>A numbered row: 'Row 2 and all even rows' fills the gaps, other gaps and returns are noticed.</summary>
    private void WorkNumbered(int number, RowInstruction row)
    {
        while (everyOther is { } other && !ReferenceEquals(other, row) && lastNumber + 1 < number && FitsParity(other, lastNumber + 1) && !IsFull(other.Span))
            WorkRow(lastNumber + 1, other, other.Span);
        if (number == 1 && lastNumber > 0) StartAgain(row);
        else if (number <= lastNumber && sectionBegins && (rows.Count == sectionStart && GoBackTo(number - 1) || BeginsOwnNumbers(number))) lastNumber = number - 1;
        else if (number == 2 && lastNumber > 1 && afterUnlabelled) BeginAfterUnlabelled();
        else if (number <= lastNumber) Report(new Mishap(MishapKind.RowNumberRepeated, row.Heading.Span) { Wanted = lastNumber + 1, Found = number });
        else if (number > lastNumber + 1 && number > skippedTo + 1 && lastNumber > 0)
        {
            Report(new Mishap(MishapKind.RowNumberMissing, row.Heading.Span) { Wanted = lastNumber + 1, Found = number });
            // One number lost is a slip of the pen; several are rows told in other words, and what is below then is not known.
            if (number > lastNumber + 2 && ground is { } below) ground = below with { Doubtful = true };
        }
        sectionBegins = false;
        WorkRow(number, row, row.Span);
    }

    /// <summary>'Second shoulder, Row 26': a section that goes on from a row further down.</summary>
    private bool GoBackTo(int number)
    {
        int index = rows.FindLastIndex(row => row.Number == number && row.Kind != RowKind.Foundation && row.Section != section);
        if (index < 0 || rows[index].Status != RowStatus.Checked) return false;
        ground = new Ground(rows[index]);
        // What another section took of that row is gone: this one counts on from there.
        startAt = rows.Where(row => row.Into == index).Select(row => row.StoppedAt).DefaultIfEmpty(0).Max();
        (carried, turnsNext, staysNext) = ([], false, false);
        return true;
    }

    /// <summary>
    /// 'Edge: Attach White in … 2nd Round.': a section counts its rows from one again, its first without a number. Where rows of it that
    /// come before are not told here ('work 1st round same as for the large motif'), what it is worked into is not known.
    /// </summary>
    private bool BeginsOwnNumbers(int number)
    {
        int worked = rows.Count - sectionStart;
        if (worked >= number) return false;
        if (worked < number - 1) (ground, carried, turnsNext, staysNext) = (null, [], false, false);
        else
            for (int i = 1; i <= worked; i++) byNumber.Set(i, rows[sectionStart + i - 1].Instruction);
        return true;
    }

    /// <summary>'If napkins are wanted, hem the linen. … 2nd Row': the first row of another part has no number, or is told in prose; what the second is worked into is not sure.</summary>
    private void BeginAfterUnlabelled()
    {
        (ground, lastNumber, everyOther) = (ground is { Row.Status: RowStatus.Checked } below ? below with { Doubtful = true } : null, 1, null);
        byNumber.Clear();
        if (rows.Count > 0) byNumber.Set(1, rows[^1].Instruction);
        sectionStart = rows.Count;
    }

    private static bool FitsParity(RowInstruction row, int number) =>
        row.Heading.Numbers.IsEmpty || (row.Heading.Numbers[0] - number) % 2 == 0;

    /// <summary>Row 1 again without a heading of its own: another part begins.</summary>
    private void StartAgain(RowInstruction row)
    {
        lastNumber = 0;
        everyOther = null;
        byNumber.Clear();
        if (!BeginsWithFoundation(Read(row)) || !IsFoundationRow(row with { Steps = Read(row) })) return;
        (ground, carried, turnsNext, staysNext) = (null, [], false, false);
        sectionStart = rows.Count;
    }

    /// <summary>'Back: ch 81, 1 shell in every 3rd st': a chain to work into begins another part, with or without a heading.</summary>
    private static EquatableArray<Step> Read(RowInstruction row) => row.Steps.Where(step => step is not UnreadStep).ToEquatableArray();

    private static bool BeginsPart(RowInstruction row) =>
        row.Heading.Kind != RowKind.Foundation && BeginsWithFoundation(Read(row)) && IsFoundationRow(row with { Steps = Read(row) }) && row.Steps.Any(step => step is StitchStep or GroupStep or RepeatStep);

    private void Report(Mishap mishap)
    {
        string label = rows.Count > 0 ? rows[^1].Label : "";
        if (!reported.Add((mishap.Kind, mishap.Span))) return;
        mishaps.Add(mishap with { Size = context.SizeName, Row = mishap.Row.Length > 0 ? mishap.Row : label });
        if (mishap.Kind != MishapKind.CannotWork) context.Falter();
    }
}
