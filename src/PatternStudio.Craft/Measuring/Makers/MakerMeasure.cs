namespace PatternStudio.Craft.Measuring.Makers;

/// <summary>What makers are compared by.</summary>
public enum MakerMeasure
{
    /// <summary>Stitches to 10 cm, as the finished piece will be.</summary>
    Stitches,

    /// <summary>Rows to 10 cm, as the finished piece will be.</summary>
    Rows,

    /// <summary>Stitches to 10 cm before blocking.</summary>
    StitchesBefore,

    /// <summary>Rows to 10 cm before blocking.</summary>
    RowsBefore,

    /// <summary>Finished width.</summary>
    Width,

    /// <summary>Finished height.</summary>
    Height,

    /// <summary>Length of yarn used.</summary>
    Yarn,

    /// <summary>Working time.</summary>
    Time,
}

/// <summary>How far honest makers lie apart by nature: nobody is called an outlier for less.</summary>
internal static class UsualHands
{
    /// <summary>
    /// The spread taken as usual, as a share of the amount (strictly of its logarithm), like a standard deviation. Gauge: hands differ by a quarter (the limit beyond which swatches are questioned, a
    /// quarter being three and a half times this). Finished size follows the gauge. Yarn: the 10 % assumed wherever one swatch is all there is. Time: one takes three times as long as
    /// another and nobody wonders. All common practice, no source.
    /// </summary>
    public static double Spread(MakerMeasure measure) => measure switch
    {
        MakerMeasure.Yarn => YarnNeed.AssumedSpread,
        MakerMeasure.Time => 0.35,
        _ => 0.25 / Outliers.Limit,
    };

    /// <summary>The largest difference from the middle that is never questioned.</summary>
    public static double Reach(MakerMeasure measure) => Spread(measure) * Outliers.Limit;
}
