using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>Edgings worked sideways, with scallops at their side. Drawn as fans beside a straight strip by custom of the trade: common practice, no source.</summary>
public sealed class ScallopTests
{
    /// <summary>A strip of 5 dc; the ch 8 after row 2 is the loop of a scallop of 12 dc, with 12 more on them.</summary>
    private const string OneScallop = """
        Ch 7.
        Row 1: Dc in 4th ch from hook, dc in next 3 ch, turn. (5 dc)
        Row 2: Ch 3, dc in next 3 dc, dc in top of tch, ch 8, turn.
        Row 3: Dc in first dc, dc in next 3 dc, dc in top of tch, turn.
        Row 4: Ch 3, dc in next 4 dc, 12 dc in ch-8 loop, turn.
        Row 5: Ch 3, dc in next 11 dc, dc in next 4 dc, dc in top of tch, turn.
        """;

    /// <summary>The same strip, its scallop edged with sc; row 7 comes back to the strip with a slip stitch and ch 5 (3 for the dc, 2 over the dc skipped).</summary>
    private const string EdgedScallop = OneScallop + """

        Row 6: Ch 3, dc in next 4 dc, sc in next 11 dc, sc in top of tch, ch 1, turn.
        Row 7: Sc in next 12 sc, sl st in next dc, ch 5, skip next dc, dc in next 2 dc, dc in top of tch, ch 3, turn.
        Row 8: Dc in next 2 dc, dc in 3rd st of ch, turn.
        """;

    /// <summary>Row 3 begins with the loop (3 + 5 chains), row 4 ends in it with cells 5 to 16, row 5 begins with 12 on those: 0 to 11.</summary>
    [Fact]
    public void Rows_go_out_into_a_scallop_and_come_back_from_it()
    {
        (WorkedPiece piece, StitchForms forms) = Worked(OneScallop);
        SideRun[] runs = [.. SideParts.Of(piece, forms).Values.OrderBy(run => run.Row)];
        Assert.Equal([new SideRun(3, 0, 1, true, 0), new SideRun(4, 5, 16, false, 0), new SideRun(5, 0, 11, true, 0)], runs);
    }

    [Fact]
    public void The_strip_is_straight_and_the_scallop_a_fan_beside_it()
    {
        (WorkedPiece piece, StitchForms forms) = Worked(OneScallop);
        IReadOnlyList<LaidRow> rows = new Layouts(piece, forms).Lay();
        Dictionary<int, SideRun> runs = SideParts.Of(piece, forms);
        double[] edge = [.. rows.Skip(1).Select(row => row.Cells.Where((_, i) => !runs.TryGetValue(row.Index, out SideRun? run) || !run.Has(i)).Max(cell => cell.Top.X))];
        Assert.InRange(edge.Max() - edge.Min(), 0, 0.2);
        // Five stitches from edge to edge are four stitch widths.
        Assert.InRange(edge.Max() - rows[5].Cells[12..].Min(cell => cell.Top.X), 3.8, 4.2);
        Assert.All(runs.Values.SelectMany(run => rows[run.Row].Cells[run.First..(run.Last + 1)]), cell => Assert.True(cell.Top.X > edge.Max()));
    }

    /// <summary>
    /// Seen from the loop, the stitches of row 4 follow each other from above to below and those of row 5 from below to above; each of row 5 is farther out than the one it stands on, by less than
    /// a dc is high (2) and a little.
    /// </summary>
    [Fact]
    public void The_rows_of_a_scallop_are_arcs_about_its_loop()
    {
        (WorkedPiece piece, StitchForms forms) = Worked(OneScallop);
        IReadOnlyList<LaidRow> rows = new Layouts(piece, forms).Lay();
        Point loop = rows[3].Cells[0].Top.Toward(rows[3].Cells[2].Top, 0.5);
        double[] outward = [.. rows[4].Cells[5..17].Select(Angle)], back = [.. rows[5].Cells[..12].Select(Angle)];
        Assert.Equal(outward.OrderDescending(), outward);
        Assert.Equal(back.Order(), back);
        Assert.True(outward[0] > 1 && outward[^1] < -1, "the fan is nearly a half disc (π/2 to -π/2)");
        foreach (LaidCell cell in rows[5].Cells[..12])
        {
            Point host = rows[4].Cells[cell.Cell.Feet[0].Place].Top;
            Assert.True((cell.Top - loop).Length > (host - loop).Length);
            Assert.InRange((cell.Top - host).Length, 0.7, 2.4);
        }

        double Angle(LaidCell cell) => Math.Atan2(loop.Y - cell.Top.Y, cell.Top.X - loop.X);
    }

    /// <summary>Row 7 begins with ch 1, which has no third chain: the end of row 8 stands on the ch 5 beside the strip, not behind the scallop.</summary>
    [Fact]
    public void The_third_chain_is_that_of_the_chain_beside_the_strip()
    {
        (WorkedPiece piece, _) = Worked(EdgedScallop);
        Cell[] below = [.. piece.Rows[7].Cells()];
        Foot foot = piece.Rows[8].Cells().Last().Feet[0];
        Assert.Equal((7, 2), (foot.Row, foot.Chain));
        Assert.Equal((CellKind.Chains, 5), (below[foot.Place].Kind, below[foot.Place].Chains));
    }

    [Theory]
    [InlineData(OneScallop)]
    [InlineData(EdgedScallop)]
    public void Scallops_make_a_chart_to_work_from(string text)
    {
        CheckedPattern pattern = PatternCheck.Check(text);
        Assert.Equal([], new ChartQuality(Chart.Draw(pattern), pattern.Sizes[0].Fabric.Pieces[0], 0, new StitchForms(pattern.Pattern)).Troubles);
    }

    /// <summary>A shell in the turning chain at a row's end makes a wavy edge of lace, no scallop beside it: it has fewer than five stitches.</summary>
    [Fact]
    public void A_shell_at_the_edge_is_no_scallop()
    {
        (WorkedPiece piece, StitchForms forms) = Worked("""
            Ch 7.
            Row 1: Dc in 4th ch from hook, dc in next 3 ch, turn. (5 dc)
            Row 2: Ch 3, dc in next 3 dc, dc in top of tch, turn.
            Row 3: Ch 3, dc in next 3 dc, 4 dc in top of tch, turn.
            Row 4: Ch 3, dc in next 6 dc, dc in top of tch, turn.
            """);
        Assert.Empty(SideParts.Of(piece, forms));
    }

    private static (WorkedPiece, StitchForms) Worked(string text)
    {
        CheckedPattern pattern = PatternCheck.Check(text);
        Assert.False(pattern.HasErrors, string.Join('\n', pattern.Findings.Select(finding => finding.Message)));
        return (pattern.Sizes[0].Fabric.Pieces[0], new StitchForms(pattern.Pattern));
    }
}
