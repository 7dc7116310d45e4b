using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// Filet told in squares: 'Ch 5, 2 sp, 4 dc, 1 sp, 7 dc, 2 sp'. A space is an open square; '4 dc' is a solid one, its first dc being the dc that closes the
/// square before it, '7 dc' two, and so on. The beginning chain is part of the first square. (Common practice of the booklets; compare the rows of 49 squares in
/// 'No. 6541 Davenport Set', Virginia Snow Studios.)
/// </summary>
internal static class Filet
{
    /// <summary>The squares of a row in order; null where the row is not told in squares alone.</summary>
    public static IReadOnlyList<MeshStep>? Squares(EquatableArray<Step> steps, Func<SizedNumber?, int?> number)
    {
        if (steps.Count < 3 || !steps.Any(IsSpaces) || FirstWork(steps) is not ChainStep { Count: var chain } || number(chain) is not (3 or 5)) return null;
        var squares = new List<MeshStep>();
        bool begun = false;
        foreach (Step step in steps)
        {
            if (step is ChainStep && !begun) begun = true;
            else if (step is RemarkStep or TurnStep or ColourStep) continue;
            else if (!begun || !Add(step, squares, number)) return null;
        }
        return squares.Exists(square => square.Solid) ? squares : null;
    }

    private static Step? FirstWork(EquatableArray<Step> steps) => steps.FirstOrDefault(step => step is not (RemarkStep or TurnStep or ColourStep));

    private static bool IsSpaces(Step step) => step is MeshStep { Solid: false } || step is RepeatStep repeat && repeat.Steps.Any(IsSpaces);

    private static bool Add(Step step, List<MeshStep> squares, Func<SizedNumber?, int?> number)
    {
        switch (step)
        {
            case MeshStep mesh:
                squares.Add(mesh);
                return true;
            case StitchStep { Where: null, Count: { } count } block when block.Stitch == StitchId.Double && number(count) is { } stitches && stitches % 3 == 1:
                if (stitches > 1) squares.Add(new MeshStep(SizedNumber.Of(stitches / 3), true, block.Span));
                return true;
            case RepeatStep { Extent: { Kind: ExtentKind.Times, Count: var times } } repeat when number(times) is { } often && often < 200:
                for (int i = 0; i < often; i++)
                    if (!repeat.Steps.All(inner => inner is RemarkStep || Add(inner, squares, number))) return false;
                return true;
            default:
                return false;
        }
    }

    /// <summary>A row of squares as its words tell it, whatever it is worked into: a ground for the row above.</summary>
    public static EquatableArray<Run> AsTold(IReadOnlyList<MeshStep> squares, Func<SizedNumber?, int?> number)
    {
        var built = new RowBuilder();
        built.Add(new Cell(CellKind.TurningChain, StitchId.Double, 3, [], true, squares[0].Span));
        foreach (MeshStep square in squares)
        {
            var stitch = new Cell(CellKind.Stitch, StitchId.Double, 0, [], true, square.Span);
            for (int i = 0; i < (number(square.Count) ?? 0); i++)
            {
                if (!square.Solid) built.Add(new Cell(CellKind.Chains, StitchId.Chain, 2, [], false, square.Span));
                for (int k = square.Solid ? 0 : 2; k < 3; k++) built.Add(stitch);
            }
        }
        return built.Build();
    }
}
