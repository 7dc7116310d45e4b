using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Measuring;

/// <summary>Writes a piece's rows down one by one, with what has been used by the end of each.</summary>
/// <param name="piece">As worked.</param>
/// <param name="tallies">What each row adds up to.</param>
/// <param name="wholeRows">How many rows, from the first, were surely worked whole.</param>
/// <param name="source">The pattern's text.</param>
/// <param name="widths">Width at each checked row, foundations left out; empty where not known.</param>
/// <param name="scale">Relative yarn in metres; null where not known.</param>
/// <param name="speed">Stitches a minute; null where not known.</param>
internal sealed class RowLines(WorkedPiece piece, List<RowTally> tallies, int wholeRows, SourceText source, IReadOnlyList<Length> widths, YarnScale? scale, double? speed)
{
    private const double Rounding = 1e-6;

    private readonly bool isWhole = wholeRows == tallies.Count && piece.Rows.All(row => row.Status == RowStatus.Checked) && tallies.TrueForAll(tally => tally.Unknown is null);
    private readonly double all = tallies.Sum(tally => tally.Yarn);

    public static string Label(WorkedRow row) => row.Label.Length > 0 ? row.Label : $"row {row.Number}";

    public TimeSpan? WholeTime => isWhole ? Time(tallies.Sum(tally => tally.Places)) : null;

    /// <summary>Needs no scale: half of the relative yarn is half of the metres.</summary>
    public string? HalfUsedAfter
    {
        get
        {
            double used = 0;
            for (int i = 0; i < tallies.Count && isWhole; i++)
            {
                used += tallies[i].Yarn;
                if (used * 2 >= all - Rounding && all > 0) return Label(piece.Rows[i]);
            }

            return null;
        }
    }

    public List<ScheduledRow> All()
    {
        var there = new Queue<Length>(widths);
        var lines = new List<ScheduledRow>(tallies.Count);
        var soFar = new Dictionary<string, double>();
        double used = 0;
        long places = 0;
        bool whole = true;
        for (int i = 0; i < tallies.Count; i++)
        {
            bool known = i < wholeRows && Known(i) && tallies[i].Unknown is null;
            whole &= known;
            used += tallies[i].Yarn;
            places += tallies[i].Places;
            foreach ((string colour, double yarn) in tallies[i].YarnByColour) soFar[colour] = soFar.GetValueOrDefault(colour) + yarn;
            Length? width = piece.Rows[i].Kind != RowKind.Foundation && Known(i) && there.TryDequeue(out Length here) && whole ? here : null;
            lines.Add(Line(i, width, known, whole, used, places) with
            {
                Colours = known ? InMetres(tallies[i].YarnByColour) : [],
                ColourTotals = whole ? InMetres(soFar) : [],
            });
        }

        return lines;
    }

    private ScheduledRow Line(int i, Length? width, bool known, bool whole, double used, long places)
    {
        WorkedRow row = piece.Rows[i];
        return new ScheduledRow(
            row.Number, Label(row), row.Side == FabricSide.Right ? "RS" : "WS", Known(i) ? row.Total : null, Change(i), width,
            known ? scale?.Of(tallies[i].Yarn) : null, whole ? scale?.Of(used) : null)
        {
            Instruction = Instruction(row),
            Section = row.Section,
            Counts = row.Counts,
            Spaces = row.Spaces,
            Share = isWhole && all > 0 ? used / all : null,
            Time = known ? Time(tallies[i].Places) : null,
            TimeSoFar = whole ? Time(places) : null,
        };
    }

    private bool Known(int row) => piece.Rows[row].Status == RowStatus.Checked;

    /// <summary>Nothing is compared with a foundation: its chains are no stitches yet.</summary>
    private long? Change(int row) =>
        row > 0 && piece.Rows[row - 1].Kind != RowKind.Foundation && Known(row) && Known(row - 1) ? piece.Rows[row].Total - piece.Rows[row - 1].Total : null;

    private TimeSpan? Time(long stitches) => speed is > 0 ? TimeSpan.FromMinutes(Math.Min(stitches / speed.Value, 1e8)) : null;

    private EquatableArray<ColourYarn> InMetres(IReadOnlyDictionary<string, double> yarn) => scale is { } known
        ? yarn.Where(colour => colour.Value > 0).Select(colour => new ColourYarn(colour.Key, known.Of(colour.Value))).ToEquatableArray()
        : [];

    /// <summary>The words of the row's own line, or of the line that repeats it.</summary>
    private string Instruction(WorkedRow row)
    {
        TextSpan span = row.CalledBy.Length > 0 ? row.CalledBy : row.Instruction.Span;
        return span.End <= source.Content.Length ? string.Join(' ', source.Slice(span).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)) : "";
    }
}
