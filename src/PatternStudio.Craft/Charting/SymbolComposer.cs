using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>
/// Composes the symbol of a stitch from its build, between its feet and its top: a stem for each leg, one slanted bar for each yarn over, a bar across
/// the head. The published keys (the Craft Yarn Council's, JIS L 0201) decide the form; a stitch that nobody has drawn yet needs no drawing by hand.
/// </summary>
internal static class SymbolComposer
{
    /// <summary>Symbols keep this distance from the places they stand on, so that rows stay apart.</summary>
    private const double Gap = 0.1;

    private const double LegGap = 0.05;
    private const double HalfHead = 0.3;
    private const double HalfCross = 0.27;
    private const double WidestCross = 0.36;

    /// <summary>A cross farther than this above its foot gets a leg.</summary>
    private const double MostGap = 0.2;
    private const double HalfBar = 0.2;

    /// <summary>A cross farther from right above its foot than this gets a leg.</summary>
    private const double MostAside = 0.2;

    /// <summary>Bars are shorter where legs stand close, and take no more than this share of the way to the next leg.</summary>
    private const double InBundle = 0.5;
    private const double BetweenLegs = 0.75;

    /// <summary>A bundle is no wider than its stitch, so that two of them may stand side by side.</summary>
    private const double HalfBundle = 0.36;
    private const double HalfPopcorn = 0.44;
    private const double HalfOval = 0.36;

    /// <summary>The strokes of a stitch.</summary>
    /// <param name="form">How it is built.</param>
    /// <param name="feet">Where its legs stand; at least one.</param>
    /// <param name="top">Where its head is.</param>
    /// <param name="up">Straight up at that place: crosses stand by it, however the stitch leans.</param>
    /// <param name="name">Its abbreviation, written out where the build is not known.</param>
    /// <param name="style">Whose key is followed where they differ.</param>
    public static IEnumerable<Shape> Compose(StitchForm form, IReadOnlyList<Point> feet, Point top, Point up, string name, SymbolStyle style = SymbolStyle.Cyc)
    {
        Point head = top.Toward(Middle(feet), Gap / Math.Max(0.2, (top - Middle(feet)).Length));
        return form.Kind switch
        {
            FormKind.SlipStitch => Slip(Middle(feet), top),
            FormKind.Together => Together(form, feet, head),
            FormKind.Cluster => Bundle(form, feet[0], head, bars: true),
            FormKind.Puff => Bundle(form, feet[0], head, bars: false),
            FormKind.Popcorn => Popcorn(form, feet[0], head),
            FormKind.Unknown => [new Words(feet[0].Toward(top, 0.5), name, 0.5)],
            _ => form is { YarnOvers: 0, Kind: FormKind.Plain } ? Cross(feet[0], head, up, style, form.FrontPost ? 1 : form.BackPost ? -1 : 0) : Tall(form, feet[0], head),
        };
    }

    private static Point Middle(IReadOnlyList<Point> points) =>
        points.Aggregate(new Point(0, 0), (sum, point) => sum + point) * (1.0 / points.Count);

    /// <summary>A dot between its foot and its top; where it reaches far, on a line.</summary>
    private static IEnumerable<Shape> Slip(Point foot, Point top)
    {
        double length = (top - foot).Length;
        Point at = foot.Toward(top, Math.Max(0.5, 1 - (0.25 / Math.Max(0.01, length))));
        yield return Dots.At(at);
        if ((at - foot).Length > 0.3 + Dots.Radius) yield return new Line(foot.Toward(at, Gap), at);
    }

    private static Line Across(Point at, Point up, double half) => new(at - (up.Right() * half), at + (up.Right() * half));

    /// <summary>A single crochet is a cross; where its foot is far or aside it gets a leg, so that two in one stitch make a V.</summary>
    private static IEnumerable<Shape> Cross(Point foot, Point head, Point up, SymbolStyle style, int post)
    {
        Point stem = head - foot;
        double half = Math.Clamp(stem.Length * 0.4, HalfCross, WidestCross);
        Point middle = head - (up * Math.Min(stem.Length * 0.5, half));
        double aside = Math.Abs((stem.X * up.Y) - (stem.Y * up.X));
        (Point slant, Point other) = style == SymbolStyle.Jis ? ((up + up.Right()) * half, (up - up.Right()) * half) : (up * half, up.Right() * half);
        yield return new Line(middle - slant, middle + slant);
        yield return new Line(middle - other, middle + other);
        if ((middle - foot).Length - half > MostGap || aside > MostAside || post != 0) yield return new Line(foot + ((middle - foot).Unit() * LegGap), middle);
        if (post != 0) yield return Hook(foot + (stem.Unit() * 0.3), stem.Unit(), post);
    }

    private static IEnumerable<Shape> Tall(StitchForm form, Point foot, Point head)
    {
        Point up = (head - foot).Unit();
        Point start = form.FrontPost || form.BackPost ? foot + (up * 0.45) : foot + (up * Gap);
        yield return new Line(start, head);
        yield return Across(head, up, HalfHead);
        foreach (Shape bar in Bars(form, start, head)) yield return bar;
        if (form.FrontPost || form.BackPost) yield return Hook(start, up, form.FrontPost ? 1 : -1);
    }

    /// <summary>The foot goes round the post below: in front of it to the right, behind it to the left.</summary>
    private static Curve Hook(Point start, Point up, int side) =>
        new(start, start - (up * 0.55) + (up.Right() * (0.1 * side)), start - (up * 0.15) + (up.Right() * (0.42 * side)));

    /// <summary>One bar for each yarn over; a half double crochet, closed at once, has none.</summary>
    private static IEnumerable<Shape> Bars(StitchForm form, Point foot, Point head)
    {
        int bars = form.Base == Terms.StitchId.HalfDouble ? 0 : form.YarnOvers;
        Point up = (head - foot).Unit();
        double step = Math.Min(0.3, (head - foot).Length / (bars + 2));
        Point middle = foot.Toward(head, 0.55);
        for (int i = 0; i < bars; i++) yield return Slanted(middle + (up * ((i - ((bars - 1) / 2.0)) * step)), up);
    }

    private static Line Slanted(Point at, Point up, double length = 1)
    {
        Point half = ((up.Right() * HalfBar) + (up * (HalfBar * 0.5))) * length;
        return new Line(at - half, at + half);
    }

    private static IEnumerable<Shape> Together(StitchForm form, IReadOnlyList<Point> feet, Point head)
    {
        foreach (Point foot in feet)
        {
            Point start = foot + ((head - foot).Unit() * Gap);
            yield return new Line(start, head);
            if (form.YarnOvers > 0)
                foreach (Shape bar in Bars(form, start, head)) yield return bar;
        }
        Point up = (head - Middle(feet)).Unit();
        double half = Math.Clamp((feet[^1] - feet[0]).Length * 0.3, HalfHead, 2 * HalfHead);
        yield return form.YarnOvers == 0 ? Across(head.Toward(Middle(feet), 0.5), up, half) : Across(head, up, HalfHead);
    }

    /// <summary>Legs from one foot to one head, bowed apart.</summary>
    private static IEnumerable<Shape> Bundle(StitchForm form, Point foot, Point head, bool bars)
    {
        Point up = (head - foot).Unit();
        Point start = foot + (up * Gap);
        double spread = Math.Min(HalfBundle, 0.13 * form.Legs), bar = BarIn(form.Legs, spread);
        for (int leg = 0; leg < form.Legs; leg++)
        {
            double aside = form.Legs == 1 ? 0 : spread * ((2.0 * leg / (form.Legs - 1)) - 1);
            Point bow = up.Right() * aside;
            yield return new Curve(start, start.Toward(head, 0.5) + (bow * 2), head);
            if (bars) yield return Slanted(start.Toward(head, 0.55) + bow, up, bar);
        }
        yield return Across(head, up, HalfHead);
    }

    private static double BarIn(int legs, double spread) => legs < 2 ? InBundle : Math.Min(InBundle, BetweenLegs * (2 * spread / (legs - 1)) / (2 * HalfBar));

    /// <summary>Whole stitches from one foot, gathered by a chain-like oval at the head.</summary>
    private static IEnumerable<Shape> Popcorn(StitchForm form, Point foot, Point head)
    {
        Point up = (head - foot).Unit();
        Point start = foot + (up * Gap);
        Point shoulder = start.Toward(head, 0.82);
        double bar = BarIn(form.Legs, 0.9 * HalfPopcorn);
        for (int leg = 0; leg < form.Legs; leg++)
        {
            Point aside = up.Right() * (form.Legs == 1 ? 0 : HalfPopcorn * ((2.0 * leg / (form.Legs - 1)) - 1));
            yield return new Curve(start, start.Toward(shoulder, 0.5) + (aside * 1.3), shoulder + (aside * 0.7));
            yield return Slanted(start.Toward(shoulder, 0.55) + (aside * 0.9), up, bar);
        }
        yield return new Oval(start.Toward(head, 0.92), HalfOval, 0.15, Dots.Turn(up.Right()));
    }

    /// <summary>
    /// The mark at the foot of a stitch worked into one loop. By the Craft Yarn Council's key an arc, open to the top for the front loop and to the bottom for the back loop; by
    /// JIS a bar below, one mark for both (the row's side tells which).
    /// </summary>
    public static Shape? LoopMark(FootKind kind, Point foot, Point top, SymbolStyle style = SymbolStyle.Cyc)
    {
        Point up = (top - foot).Unit();
        Point side = up.Right() * HalfHead;
        return (kind, style) switch
        {
            (FootKind.BackLoop or FootKind.FrontLoop, SymbolStyle.Jis) => new Line(foot - side + (up * 0.03), foot + side + (up * 0.03)),
            (FootKind.BackLoop, _) => new Curve(foot - side - (up * 0.05), foot + (up * 0.25), foot + side - (up * 0.05)),
            (FootKind.FrontLoop, _) => new Curve(foot - side + (up * 0.15), foot - (up * 0.15), foot + side + (up * 0.15)),
            (FootKind.ThirdLoop, _) => new Line(foot - (up.Right() * 0.12), foot + (up.Right() * 0.12)),
            _ => null,
        };
    }
}
