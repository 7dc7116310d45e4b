using PatternStudio.Craft.Reading.Lines;
using PatternStudio.Craft.Reading.TermsFinding;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading;

/// <summary>Reads the written pattern into an instruction tree.</summary>
public static class PatternReader
{
    /// <summary>Reads a text. Never throws on any text: what can't be read is a node of the tree.</summary>
    /// <param name="text">The pattern as written; at most <see cref="ReadingLimits.Characters"/> are read.</param>
    /// <param name="told">The terminology, where the caller knows it; null to find it from the text.</param>
    public static Pattern Read(string text, Terminology? told = null)
    {
        var source = new SourceText(text);
        bool isText = TextChecks.IsText(text);
        Token[] tokens = isText ? Lexer.Read(text, Math.Min(text.Length, ReadingLimits.Characters)) : [];
        TermsDecision terms = TermsFinder.Decide(tokens, told);
        var context = new ReadingContext(source, InlineAbbreviations.LeaveOut(tokens, terms.Terminology), terms.Terminology);
        TextChecks.Report(context, text, isText);
        context.Sizes = SizeList.LongestIn(context);
        context.HasBareHeadings = Headings.BareHeadings.AreIn(context);
        Definitions.InlineDefinitions.EnterNames(context);
        var document = new DocumentReader(context);
        document.Read(Blocks.Of(context));
        return new Pattern(
            source, terms, SizesOf(context), document.Pieces.ToEquatableArray(), context.Document.Definitions.ToEquatableArray(),
            context.Document.Statements.ToEquatableArray(), context.Troubles.ToEquatableArray());
    }

    /// <summary>The names stated for the sizes, where they are as many as the size lists have; else numbers.</summary>
    private static EquatableArray<string> SizesOf(ReadingContext context)
    {
        if (context.Sizes == 1) return [""];
        IReadOnlyList<string>? names = context.Document.SizeNames;
        if (names?.Count != context.Sizes) names = context.SizeNames;
        return names.Count == context.Sizes
            ? names.ToEquatableArray()
            : Enumerable.Range(1, context.Sizes).Select(size => $"Size {size}").ToEquatableArray();
    }
}
