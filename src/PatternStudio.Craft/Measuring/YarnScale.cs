namespace PatternStudio.Craft.Measuring;

/// <summary>
/// The scale that turns relative yarn into metres. How much a stitch takes beside a chain comes from its hook motions (the anatomy's yarn model, our own); how
/// much that is in metres comes from weighed swatches, or is a rough guess that says so.
/// </summary>
/// <param name="PerChain">The yarn of one chain, as expected.</param>
/// <param name="Trace">How it was found.</param>
public sealed record YarnScale(YarnLength PerChain, string Trace)
{
    /// <summary>What makers will use for one chain, in metres.</summary>
    public Prediction PerMaker { get; init; }

    /// <summary>How the spread was found, in a sentence.</summary>
    public string Assumption { get; init; } = "";

    /// <summary>True where no weighed swatch stands behind it.</summary>
    public bool IsRough { get; init; }

    /// <summary>The yarn of so much relative yarn.</summary>
    public YarnLength Of(double chains) => PerChain * chains;
}
