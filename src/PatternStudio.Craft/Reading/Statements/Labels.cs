using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Statements;

/// <summary>A label of the front matter.</summary>
/// <param name="Kind">What its words state; null where it states nothing itself.</param>
/// <param name="OpensDefinitions">True for 'Special stitches'.</param>
internal sealed record Label(StatementKind? Kind, bool OpensDefinitions = false);

/// <summary>Reads the labels that patterns put before their statements: 'Gauge:', 'Finished size:', 'Special stitches', 'Notes'.</summary>
internal static class Labels
{
    private static readonly (Phrase Words, Label Label)[] All =
    [
        (new("special|pattern|stitch st|guide|pattern used?"), new(null, OpensDefinitions: true)),
        (new("special abbreviations|terms"), new(null, OpensDefinitions: true)),
        (new("gauge|tension"), new(StatementKind.Gauge)),
        (new("finished|completed|approximate|final size|measurements|measurement|dimensions"), new(StatementKind.FinishedSize)),
        (new("measurements|dimensions"), new(StatementKind.FinishedSize)),
        (new("size"), new(StatementKind.Sizes)),
        (new("sizes"), new(StatementKind.Sizes)),
        (new("materials|yarn|supplies|notions"), new(StatementKind.Yarn)),
        (new("you will? need"), new(StatementKind.Yarn)),
        (new("to fit"), new(StatementKind.Sizes)),
        (new("fits"), new(StatementKind.Sizes)),
        (new("around|height|width|length"), new(StatementKind.FinishedSize)),
        (new("st used"), new(StatementKind.Note)),
        (new("caution|safety|care|finishing|warning"), new(StatementKind.Note)),
        (new("st count"), new(StatementKind.Multiple)),
        (new("crochet? hook"), new(StatementKind.Hook)),
        (new("st|pattern? multiple"), new(StatementKind.Multiple)),
        (new("skill|difficulty? level|difficulty"), new(StatementKind.Level)),
        (new("pattern|designer's? notes|note"), new(StatementKind.Note)),
        (new("st? abbreviations"), new(StatementKind.Abbreviation)),
        (new("terms"), new(StatementKind.Terms)),
        (new("pattern|instructions|directions|method"), new((StatementKind?)null)),
        (new("written? in? uk|us|british|american crochet? terms|terminology|abbreviations used?"), new(StatementKind.Terms)),
    ];

    /// <summary>'(US terms)', '(make 1)' between the label and its colon.</summary>
    private static bool TakeAside(Cursor cursor)
    {
        if (cursor.Partner() is >= 0 and int partner) cursor.At = partner + 1;
        return true;
    }

    private static readonly Phrase ChainMultiple = new("ch a? loosely? any? multiple of");
    private static readonly Phrase MultipleOf = new("multiple of");

    /// <summary>True at 'Ch a multiple of 6 + 2'.</summary>
    public static bool StatesChainMultiple(Cursor cursor) => cursor.Is(ChainMultiple);

    /// <summary>Takes a label; the words after it stay. Null where none stands here.</summary>
    public static Label? Take(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Is(MultipleOf) || StatesChainMultiple(cursor)) return new Label(StatementKind.Multiple);
        foreach ((Phrase words, Label label) in All)
        {
            if (cursor.Take(words) && TakeAside(cursor) && (cursor.AtEnd || cursor.Kind is TokenKind.Colon or TokenKind.Dot or TokenKind.Dash or TokenKind.Semicolon))
            {
                if (label.Kind == StatementKind.Terms) cursor.At = from;
                else cursor.SkipSeparators();
                return label;
            }
            cursor.At = from;
        }
        return null;
    }
}
