namespace PatternStudio.Craft.Measuring.Makers;

/// <summary>What a proposal is about.</summary>
public enum ProposalKind
{
    /// <summary>The printed gauge is not what makers get.</summary>
    Gauge,

    /// <summary>The pieces come out of another size than is printed.</summary>
    Size,

    /// <summary>The yarn runs out, or is far too much.</summary>
    Yarn,

    /// <summary>Those who got the gauge used another hook than the pattern names.</summary>
    Hook,
}

/// <summary>Something to decide, with the evidence. It changes nothing by itself.</summary>
/// <param name="Measure">What was measured.</param>
/// <param name="Question">What to decide, in a sentence or two.</param>
/// <param name="Effect">What it does to size and yarn; empty where nothing.</param>
/// <param name="Makers">How many makers it rests on.</param>
public sealed record Proposal(ProposalKind Kind, MakerMeasure Measure, string Question, string Effect, int Makers);
