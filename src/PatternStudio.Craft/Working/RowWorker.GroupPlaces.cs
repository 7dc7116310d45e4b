using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Working;

/// <summary>Places inside something: the middle of a shell, the third chain of a loop.</summary>
internal sealed partial class RowWorker
{
    private (Target?, Mishap?) Centre(Placement where)
    {
        if (course is null) return (null, null);
        PlaceKind whole = where.Within ?? where.Kind;
        // '…, but ending last repeat with ch 2, dc in center of 1st loop': the first loop of this round.
        if (whole.Noun == PlaceNoun.Space && (context.Says(where.Span, "1st") || context.Says(where.Span, "first")) && OwnBeginning(where) is { } own) return own;
        if (whole.Noun is PlaceNoun.Space or PlaceNoun.ChainSpace or PlaceNoun.Corner)
        {
            long index = course.Find(at.Position, (cell, i) => places!.Offers(cell, i, whole) > 0);
            return index < 0 ? (null, Missing(whole, where.Span)) : (Arrive(index, whole, where), null);
        }
        if (whole.Noun != PlaceNoun.Group && course.Find(at.Position, (cell, _) => cell.GroupSize >= 3 && cell.GroupIndex == cell.GroupSize / 2) is var middle and >= 0)
            return (Arrive(middle, PlaceKind.AnyStitch, where), null);
        long group = course.Find(at.Position, (cell, i) => StartsGroupOf(cell, i, whole));
        if (group < 0 && course.Find(at.Position, (cell, _) => cell.Kind == CellKind.Picot && cell.Stitch == whole.Stitch) is var picot and >= 0) return (Arrive(picot, whole, where), null);
        return group < 0 ? (null, Missing(whole, where.Span)) : (IntoGroup(group, course.At(group), where), null);
    }

    private bool StartsGroupOf(Cell cell, long index, PlaceKind kind) =>
        cell.GroupSize > 1 && places!.IsFirstOfGroup(cell, index) && (kind.Noun != PlaceNoun.Group || places.IsOf(cell, kind) || cell is { Group: null, GroupSize: >= 3 } && IsShapeOnly(kind));

    /// <summary>A group is entered at its middle: the space in a V-stitch, the middle stitch of a shell.</summary>
    private Target IntoGroup(long first, Cell cell, Placement? where)
    {
        long middle = first + cell.GroupSize / 2;
        for (int i = 0; i < cell.GroupSize && first + i < course!.Length; i++)
            if (course.At(first + i).Kind == CellKind.Chains) middle = first + i;
        bool space = course!.At(middle).Kind == CellKind.Chains;
        at = at with { Position = first + cell.GroupSize, Chain = 0, Last = middle, LastChain = -1, InSpace = true };
        return TargetAt(middle, -1, space, where);
    }

    /// <summary>'3rd dc of next shell', 'ch-1 sp of next V-st', '2nd ch of ch-5'.</summary>
    private (Target?, Mishap?) Nth(Placement where)
    {
        if (course is null) return (null, null);
        if (IsTopOfBeginning(where)) return TurningChain(where with { Choice = PlaceChoice.TurningChainTop });
        long first = OrdinalOrigin(where), end = course.Length;
        if (where.Within is { } whole)
        {
            first = course.Find(at.Position, (cell, i) => whole.Noun == PlaceNoun.Group ? StartsGroupOf(cell, i, whole) : places!.Offers(cell, i, whole) > 0);
            if (first < 0) return (null, Missing(whole, where.Span));
            Cell cell = course.At(first);
            if (cell.Kind == CellKind.Chains && where.Kind.Noun is PlaceNoun.Chain or PlaceNoun.AnyStitch) return NthChain(first, cell, where);
            end = first + Math.Max(1, cell.GroupSize);
        }
        long index = first - 1;
        for (int n = 0; n < Math.Max(1, where.Ordinal ?? 1); n++)
            if ((index = course.Find(index + 1, (cell, i) => places!.Offers(cell, i, where.Kind) > 0)) < 0 || index >= end) return (null, Missing(where.Kind, where.Span));
        Target target = Arrive(index, where.Kind, where);
        if (ordinalBefore is { After: -1 } counted) ordinalBefore = counted with { After = at.Position };
        if (where.Within is not null) at = at with { Position = end, Chain = 0, InSpace = true };
        return (target, null);
    }

    /// <summary>'sc in 3rd ch of ch-4', where ch 4 stands for a dc and a space: the dc's top.</summary>
    private bool IsTopOfBeginning(Placement where) =>
        where is { Choice: PlaceChoice.Nth, Within: { Noun: PlaceNoun.ChainSpace, Chains: { } chains }, Kind.Noun: PlaceNoun.Chain or PlaceNoun.AnyStitch } && places!.BeginsWith(chains)
        && course!.Find(at.Position, (cell, _) => cell.Kind == CellKind.Chains && cell.Chains == chains) < 0;

    private (Target?, Mishap?) NthChain(long index, Cell cell, Placement where)
    {
        int n = where.Ordinal ?? (cell.Chains + 1) / 2;
        if (n < 0) n += cell.Chains + 1;
        if (n > cell.Chains || n < 1) return (null, new Mishap(MishapKind.PastTheEnd, where.Span) { Named = "ch", Wanted = n, Found = cell.Chains, Met = course!.Row.Label });
        at = at with { Position = index + 1, Chain = 0, Last = index, LastChain = n - 1, InSpace = true };
        return (TargetAt(index, n - 1, false, where), null);
    }

    /// <summary>'1 dc in 2nd ch, 1 dc in 3rd ch': both are counted from where the first was.</summary>
    private long OrdinalOrigin(Placement where)
    {
        if (where is { Within: not null } or { Ordinal: null or < 1 }) return at.Position;
        long origin = ordinalBefore is var (from, ordinal, after) && after == at.Position && where.Ordinal == ordinal + 1 ? from : at.Position;
        ordinalBefore = (origin, where.Ordinal.Value, -1);
        return origin;
    }

    private (long Origin, int Ordinal, long After)? ordinalBefore;

    private static readonly StitchId PicotLoop = new("picotloop");

    /// <summary>'Sc in next loop, ch 4, sc in same loop (picot loop)': chains that end where they began are called so.</summary>
    private void NamePicotLoop(Foot foot)
    {
        if (builder.Last is not { Kind: CellKind.Chains } loop) return;
        bool endsWhereItBegan = builder.BeforeLast is { } before ? before.Feet is [var began] && began == foot : middleOfLoop is not null && at.Last == 0;
        if (!endsWhereItBegan) return;
        builder.RemoveLast();
        builder.Add(loop with { Group = PicotLoop });
    }

    /// <summary>'Ch 3, dc2tog in same sp (counts as first CL)': the stitch just made is one of the pattern's own, and is counted with them.</summary>
    private void CountAsNamed(RemarkStep remark)
    {
        const string CountsAs = "counts as ";
        int at = remark.Text.IndexOf(CountsAs, StringComparison.OrdinalIgnoreCase);
        if (at < 0 || builder.Last is not { Kind: CellKind.Stitch } made) return;
        string name = remark.Text[(at + CountsAs.Length)..].TrimEnd(')', ']', '.', ' ').Split(' ')[^1];
        if (context.Pattern.Definitions.FirstOrDefault(own => own.Steps.IsEmpty && own.Names.Any(other => other.Equals(name, StringComparison.OrdinalIgnoreCase))) is not { } definition || definition.Id == made.Stitch) return;
        builder.RemoveLast();
        builder.Add(made with { Stitch = definition.Id });
    }
}
