namespace PatternStudio.Craft.Terms;

/// <summary>
/// Names one kind of stitch, whatever the terminology: the US abbreviation in lower case without blanks, as the vocabulary file
/// lists it (<c>sc</c>, <c>dc</c>, <c>sc2tog</c>, <c>fpdc</c>, <c>slst</c>), or a designer's own abbreviation for a special stitch (<c>puff</c>).
/// </summary>
/// <param name="Value">Never empty.</param>
public readonly record struct StitchId(string Value)
{
    public static readonly StitchId SlipStitch = new("slst");
    public static readonly StitchId Chain = new("ch");
    public static readonly StitchId Single = new("sc");
    public static readonly StitchId HalfDouble = new("hdc");
    public static readonly StitchId Double = new("dc");
    public static readonly StitchId Treble = new("tr");
    public static readonly StitchId DoubleTreble = new("dtr");

    /// <inheritdoc/>
    public override string ToString() => Value;
}
