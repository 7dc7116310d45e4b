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

    /// <summary>Takes a line that is front matter; false where it may be an instruction or a piece heading.</summary>
    public bool Take(Cursor cursor, bool inRows)
    {
        int from = cursor.At;
        if (Labels.Take(cursor) is { } label) return TakeLabelled(cursor, label, from);
        if (StitchDefinitions.Take(cursor, inDefinitions) is { } definition)
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
        return !inRows && TakeTitle(cursor, from);
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
            else AddStatement(cursor, kind, from);
        }
        else if (label.OpensDefinitions && !cursor.AtEnd && StitchDefinitions.Take(cursor, labelled: true) is { } definition) definitions.Add(definition);
        return true;
    }

    private void AddStatement(Cursor cursor, StatementKind kind, int from)
    {
        statements.Add(new Statement(kind, cursor.Slice(cursor.At, cursor.End), cursor.Span(from, cursor.End)));
        statements.AddRange(TurningChainNotes.In(cursor, alone: false));
        if (kind == StatementKind.Sizes) SizeNames = SizeNameList.Of(cursor);
    }

    /// <summary>The names of the sizes, where a statement lists them.</summary>
    public IReadOnlyList<string>? SizeNames { get; private set; }

    /// <summary>The first line that is nothing else is the title.</summary>
    private bool TakeTitle(Cursor cursor, int from)
    {
        if (titled || Instructions.StartAt(cursor)) return false;
        titled = true;
        statements.Add(new Statement(StatementKind.Title, cursor.Slice(from, cursor.End), cursor.Span(from, cursor.End)));
        return true;
    }
}
