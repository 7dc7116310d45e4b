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
    /// The spread taken as usual, as a share of the amount (strictly of its logarithm), like a standard deviation; three and a half times this is left out. Gauge: the least slip that counts is one by a
    /// factor of two (another length, half of it counted); what is nearer to that than to the middle, √2 times off, is taken for a slip and not for a hand. Finished size follows the gauge. Yarn: the 10 % assumed wherever one swatch is all there is. Time: one takes three times as long as
    /// another and nobody wonders. All common practice, no source.
    /// </summary>
    public static double Spread(MakerMeasure measure) => measure switch
    {
        MakerMeasure.Yarn => YarnNeed.AssumedSpread,
        MakerMeasure.Time => 0.35,
        _ => Math.Log(2) / 2 / Outliers.Limit,
    };

    /// <summary>The largest difference from what is expected that is never questioned: a quarter for gauge and size, beyond which swatches are questioned too. Common practice, no source.</summary>
    public static double Reach(MakerMeasure measure) => measure is MakerMeasure.Yarn or MakerMeasure.Time ? Spread(measure) * Outliers.Limit : 0.25;
}
