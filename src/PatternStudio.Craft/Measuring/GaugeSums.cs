namespace PatternStudio.Craft.Measuring;

/// <summary>The sums that designers do from a swatch by hand, as functions: what the row schedule is checked with, and what the web asks for single numbers.</summary>
public static class GaugeSums
{
    /// <summary>Stitches for a width: width × (swatch stitches ÷ swatch width), not rounded.</summary>
    public static double StitchesFor(Length width, Swatch swatch) => width / Counted(swatch).StitchWidth;

    /// <summary>Rows for a height: height × (swatch rows ÷ swatch height), not rounded.</summary>
    public static double RowsFor(Length height, Swatch swatch) => height / Counted(swatch).RowHeight;

    /// <summary>Grams by area: swatch grams × (piece area ÷ swatch area). Good where the piece is worked as the swatch is.</summary>
    public static Mass YarnByArea(Swatch swatch, FabricSize piece) =>
        Weighed(swatch) * (piece.Width / swatch.Width * (piece.Height / swatch.Height));

    /// <summary>Grams by stitch: swatch grams ÷ swatch stitches × stitches of the piece.</summary>
    public static Mass YarnByStitch(Swatch swatch, double stitches) => Weighed(swatch) / (Counted(swatch).Stitches * swatch.Rows) * stitches;

    /// <summary>Whole balls: rounded up, colour by colour.</summary>
    public static int Balls(YarnLength needed, YarnLabel ball)
    {
        ArgumentNullException.ThrowIfNull(ball);
        double balls = needed / ball.BallLength;
        // What is a ball to the billionth is that ball: 400 m are two balls of 200 m, however the 400 were summed.
        return (int)Math.Min(Math.Ceiling(balls - 1e-9), int.MaxValue / 1000);
    }

    private static Swatch Counted(Swatch swatch)
    {
        ArgumentNullException.ThrowIfNull(swatch);
        return swatch.Kind == SwatchKind.Stitches ? swatch : throw new ArgumentException("The swatch must be counted in stitches.", nameof(swatch));
    }

    private static Mass Weighed(Swatch swatch)
    {
        ArgumentNullException.ThrowIfNull(swatch);
        return swatch.Weight ?? throw new ArgumentException("The swatch must be weighed.", nameof(swatch));
    }
}
