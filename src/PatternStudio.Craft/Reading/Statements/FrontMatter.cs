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
            if (cursor.AtEnd) section = kind;
            else if (kind == StatementKind.Note && StitchDefinitions.Take(cursor, labelled: false) is { } noted) definitions.Add(noted);
            else return AddUpToNext(cursor, kind, from);
        }
        else if (label.OpensDefinitions && !cursor.AtEnd && StitchDefinitions.Take(cursor, labelled: true) is { } definition) definitions.Add(definition);
        return true;
    }

    /// <summary>'Stitch count: any odd number. Ch 22.', 'US terms. Ch 120, …', 'UK terms. Sizes S (M, L)': what begins anew on the same line is read for itself; false leaves it to be read as an instruction.</summary>
    private bool AddUpToNext(Cursor cursor, StatementKind kind, int from)
    {
        int next = cursor.At + 1;
        while (next < cursor.End && !(cursor.Context.Tokens[next - 1].Kind == TokenKind.Dot && BeginsAnew(cursor, kind, next))) next++;
        next = Math.Min(next, cursor.End);
        AddStatement(new Cursor(cursor.Context, cursor.At, next), kind, from);
        cursor.At = next;
        return cursor.AtEnd || Take(cursor, mayBeTitle: false);
    }

    private static bool BeginsAnew(Cursor cursor, StatementKind kind, int at)
    {
        var rest = new Cursor(cursor.Context, at, cursor.End);
        return kind is StatementKind.Multiple or StatementKind.Terms && rest.Is(Chain) || kind == StatementKind.Terms && Labels.Take(rest) is not null;
    }

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
