using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Tree;

/// <summary>'Make a sufficiently long foundation chain', 'Chain a number of stitches divisible by 3': a foundation chain whose length is the maker's choice.</summary>
/// <param name="Of">The number that its chains must be a multiple of; 1 where the words name none.</param>
/// <param name="Plus">The chains beyond that multiple: 2 in 'a multiple of 6 + 2'.</param>
public sealed record OpenChainStep(int Of, int Plus, TextSpan Span) : Step(Span);
