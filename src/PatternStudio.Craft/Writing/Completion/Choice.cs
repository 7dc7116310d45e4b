namespace PatternStudio.Craft.Writing.Completion;

/// <summary>Words that can come next.</summary>
/// <param name="From">Where in the line the words begin that they take the place of, 0-based; the cursor where they take the place of none.</param>
/// <param name="Words">The words.</param>
/// <param name="Says">What they are: 'the next stitch of Row 3', 'single crochet'.</param>
public sealed record Choice(int From, string Words, string Says);
