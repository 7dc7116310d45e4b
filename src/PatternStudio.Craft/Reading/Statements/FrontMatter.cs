using PatternStudio.Craft.Reading.Definitions;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Statements;

/// <summary>Takes the lines around the rows that say something about the pattern: labels, notes, special stitches, the title.</summary>
internal sealed class FrontMatter
{
    private readonly List<Statement> statements = [];
    private readonly List<StitchDefinition> definitions = [];
    private StatementKind? section;
    private bool inDefinitions;
    private bool titled;

    public IReadOnlyList<Statement> Statements => statements;

    public IReadOnlyList<StitchDefinition> Definitions => definitions;

    /// <summary>Adds a definition met inside a row.</summary>
    public void Add(StitchDefinition definition) => definitions.Add(definition);

    /// <summary>Adds a statement met inside a row.</summary>
    public void Add(Statement statement) => statements.Add(statement);

    /// <summary>Adds what prose among the rows says of turning chains.</summary>
    public void AddNotes(Passage passage, ReadingContext context)
    {
        var words = new Cursor(context, context.TokenAt(passage.Span.Start), context.TokenAt(passage.Span.End));
        statements.AddRange(TurningChainNotes.In(words, alone: false));
    }

    /// <summary>Ends an open section ('Notes') where a heading stands.</summary>
    public void CloseSection(bool atHeading)
    {
        if (!atHeading) return;
        section = null;
        inDefinitions = false;
    }

    /// <summary>Takes a line that is front matter; false where it may be an instruction or a piece heading.</summary>
    public bool Take(Cursor cursor, bool mayBeTitle)
    {
        int from = cursor.At;
        if (Labels.Take(cursor) is { } label) return TakeLabelled(cursor, label, from);
        if (!(section == StatementKind.Abbreviation && !MotionWords.AreWhole(cursor)) && StitchDefinitions.Take(cursor, inDefinitions) is { } definition)
        {
            definitions.Add(definition);
            titled = true;
            return true;
        }
        cursor.At = from;
        if (TurningChainNotes.In(cursor, alone: true) is { Count: > 0 } notes)
        {
            statements.AddRange(notes);
            return true;
        }
        if (section is { } open && !Instructions.StartAt(cursor))
        {
            AddStatement(cursor, open, from);
            return true;
        }
        section = null;
        inDefinitions = false;
        return mayBeTitle && TakeTitle(cursor, from);
    }

    private bool TakeLabelled(Cursor cursor, Label label, int from)
    {
        inDefinitions = label.OpensDefinitions;
        section = null;
        titled = true;
        if (label.Kind is { } kind)
        {
            cursor.SkipSeparators();
            if (kind == StatementKind.Terms && TakeSentence(cursor, kind, from)) return cursor.AtEnd || Take(cursor, mayBeTitle: false);
            if (cursor.AtEnd) section = kind;
            else if (kind == StatementKind.Note && StitchDefinitions.Take(cursor, labelled: false) is { } noted) definitions.Add(noted);
            else return AddUpToChain(cursor, kind, from);
        }
        else if (label.OpensDefinitions && !cursor.AtEnd && StitchDefinitions.Take(cursor, labelled: true) is { } definition) definitions.Add(definition);
        return true;
    }

    /// <summary>'US terms. Ch 120, …', 'UK terms. Sizes S (M, L)': what follows is read for itself.</summary>
    private bool TakeSentence(Cursor cursor, StatementKind kind, int from)
    {
        int end = cursor.At;
        while (end < cursor.End && cursor.Context.Tokens[end].Kind is not (TokenKind.Dot or TokenKind.Colon)) end++;
        if (end >= cursor.End || cursor.Context.Tokens[end].Kind != TokenKind.Dot) return false;
        var rest = new Cursor(cursor.Context, end + 1, cursor.End);
        if (!rest.Is(Chain) && Labels.Take(rest) is null) return false;
        AddStatement(new Cursor(cursor.Context, cursor.At, end), kind, from);
        cursor.At = end + 1;
        return true;
    }

    /// <summary>'Stitch count: any odd number. Ch 22.': the chain is an instruction on the same line; false leaves it to be read.</summary>
    private bool AddUpToChain(Cursor cursor, StatementKind kind, int from)
    {
        int chain = cursor.At + 1;
        while (chain < cursor.End && !(cursor.Context.Tokens[chain - 1].Kind == TokenKind.Dot && IsChain(cursor, chain))) chain++;
        if (kind != StatementKind.Multiple || chain >= cursor.End)
        {
            AddStatement(cursor, kind, from);
            return true;
        }
        AddStatement(new Cursor(cursor.Context, cursor.At, chain), kind, from);
        cursor.At = chain;
        return false;
    }

    private static bool IsChain(Cursor cursor, int at) => Chain.Match(cursor.Context.Tokens.AsSpan(0, cursor.End), at) >= 0;

    private static readonly Phrase Chain = new("ch #");

    private void AddStatement(Cursor cursor, StatementKind kind, int from)
    {
        string words = Plain(cursor.Slice(cursor.At, cursor.End));
        if (kind == StatementKind.Sizes && SizeNameList.Of(words) is null && words.Any(char.IsAsciiDigit)) kind = StatementKind.FinishedSize;
        statements.Add(new Statement(kind, words, cursor.Span(from, cursor.End)));
        statements.AddRange(TurningChainNotes.In(cursor, alone: false));
        if (kind == StatementKind.Sizes) SizeNames = SizeNameList.Of(words);
    }

    /// <summary>The words without the marks that make letters bold.</summary>
    private static string Plain(string words) => words.Replace("**", "", StringComparison.Ordinal).Trim();

    /// <summary>The names of the sizes, where a statement lists them.</summary>
    public IReadOnlyList<string>? SizeNames { get; private set; }

    /// <summary>The first line that is nothing else is the title.</summary>
    private bool TakeTitle(Cursor cursor, int from)
    {
        if (titled || Instructions.StartAt(cursor)) return false;
        titled = true;
        statements.Add(new Statement(StatementKind.Title, Plain(cursor.Slice(from, cursor.End)), cursor.Span(from, cursor.End)));
        return true;
    }
}
