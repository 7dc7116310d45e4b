using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Works an instruction tree into a fabric, row upon row.</summary>
public static class PatternWorker
{
    /// <summary>Works one size of a pattern. What the text leaves open is taken as the trade usually takes it, or as the pattern itself comes out best.</summary>
    /// <param name="pattern">The tree.</param>
    /// <param name="size">0-based index into <see cref="Pattern.Sizes"/>.</param>
    /// <param name="unroll">Work every repeat turn by turn. Slow; the reference that the usual way is tested against.</param>
    public static PatternWork Work(Pattern pattern, int size, bool unroll = false)
    {
        if (SampleFoundation.Of(pattern) is not { } open) return Best(pattern, size, unroll, sample: null);
        int? chains = SampleFoundation.Find(SampleFoundation.Lengths(open), length => RowsRight(Best(pattern, size, unroll, length)));
        return Best(pattern, size, unroll, chains);
    }

    /// <summary>Rows that come out; of lengths over which as many do, the one whose counts are those that the text states is its own.</summary>
    private static int RowsRight(PatternWork work) =>
        RowWeight * work.Fabric.Pieces.Sum(piece => piece.Rows.Count(row => row is { Status: RowStatus.Checked, SampleChains: not null })) - work.Mishaps.Count(mishap => mishap.Kind == MishapKind.CountDiffers);

    private const int RowWeight = 1000;

    private static PatternWork Best(Pattern pattern, int size, bool unroll, int? sample)
    {
        Try best = WorkWith(pattern, size, Conventions.Usual, unroll, sample, enough: null);
        if (best.Trouble == 0) return best.Work;
        foreach (Func<Conventions, Conventions> change in Changes(best))
        {
            Try other = WorkWith(pattern, size, change(best.Work.Conventions), unroll, sample, enough: best.Trouble);
            if (other.Trouble < best.Trouble) best = other;
            if (best.Trouble == 0) break;
        }
        return best.Work;
    }

    private sealed record Try(PatternWork Work, int Trouble, IReadOnlyCollection<int> OpenTurningChains, bool HasChains);

    /// <summary>The conventions that may be otherwise than usual in this pattern, the commonest first.</summary>
    private static IEnumerable<Func<Conventions, Conventions>> Changes(Try usual)
    {
        foreach (int chains in usual.OpenTurningChains.Order())
        {
            bool counts = usual.Work.Conventions.Counts(chains) ?? chains >= 3;
            yield return conventions => conventions.With(chains, !counts);
        }
        if (usual.Work.Mishaps.Any(mishap => mishap.Kind is MishapKind.NoSuchPlace or MishapKind.PastTheEnd or MishapKind.OtherKind))
            yield return conventions => conventions with { TurningChainsAreSpaces = true };
        if (usual.HasChains) yield return conventions => conventions with { ChainsAreStitches = true };
    }

    /// <param name="enough">Trouble from which on the rest is left: the try has come out no better than another. Null to work to the end.</param>
    private static Try WorkWith(Pattern pattern, int size, Conventions conventions, bool unroll, int? sample, int? enough)
    {
        var context = new WorkContext(pattern, size, conventions, unroll) { SampleChains = sample, EnoughTrouble = enough };
        var pieces = new List<WorkedPiece>();
        var mishaps = new List<Mishap>();
        var workers = new List<(string Name, PieceWorker Worker)>();
        foreach (Piece piece in pattern.Pieces)
        {
            if (workers.Count == 0 || PieceWorker.BeginsAnew(pattern, piece)) workers.Add((piece.Name, new PieceWorker(context)));
            workers[^1].Worker.Work(piece);
        }
        foreach ((string name, PieceWorker worker) in workers)
        {
            pieces.Add(new WorkedPiece(name, worker.Rows));
            mishaps.AddRange(worker.Mishaps);
        }
        var fabric = new Fabric(pattern.Sizes[size], pieces.ToEquatableArray());
        bool chains = pieces.Any(piece => piece.Rows.Told.Any(row => !row.Spaces.IsEmpty));
        return new Try(new PatternWork(fabric, mishaps.ToEquatableArray(), conventions), context.Trouble, context.OpenTurningChains, chains);
    }
}
