using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Writing.Instructions;

/// <summary>Writes the entries of a piece, one line each.</summary>
internal sealed class RowWords(StitchWords stitches)
{
    private readonly StepWords steps = new(stitches);
    private readonly CountWords counts = new(stitches);

    public string Of(PieceItem item) => item switch
    {
        RowInstruction row => Of(row),
        RepeatRows repeat => Of(repeat),
        Passage passage => passage.Text.ReplaceLineEndings(" "),
        _ => stitches.AsWritten(item.Span),
    };

    private string Of(RowInstruction row)
    {
        string heading = Heading(row.Heading) + OnlySizes(row.Heading.OnlySizes);
        string body = steps.List(row.Steps);
        bool verbatim = !row.Steps.IsEmpty && row.Steps[0] is RemarkStep or UnreadStep or UncountedStep;
        string sentence = (heading.Length > 0 ? heading + ": " : "") + (verbatim ? body : Capital(body));
        if (!sentence.EndsWith('.') && body.Length > 0) sentence += ".";
        return row.Stated is { } stated ? $"{sentence} {counts.Of(stated)}" : sentence;
    }

    private static string Heading(RowHeading heading)
    {
        string side = heading.Side switch { FabricSide.Right => " (RS)", FabricSide.Wrong => " (WS)", _ => "" };
        string row = heading.Kind == RowKind.Round ? "Rnd" : "Row";
        return heading.Numbering switch
        {
            RowNumbering.Listed when heading.Numbers.Count == 1 => $"{row} {heading.Numbers[0]}{side}",
            RowNumbering.Listed => $"{row}s {NumberWords.List(heading.Numbers)}{side}",
            RowNumbering.Range when heading.First!.Values == heading.Last!.Values => $"{row} {NumberWords.Of(heading.First!)}{side}",
            RowNumbering.Range => $"{row}s {NumberWords.Of(heading.First!)}–{NumberWords.Of(heading.Last!)}{side}",
            RowNumbering.Next when NumberWords.IsOne(heading.Last) => $"Next {row.ToLowerInvariant()}{side}",
            RowNumbering.Next => $"Next {NumberWords.Of(heading.Last!)} {row.ToLowerInvariant()}s{side}",
            _ => heading.Text,
        };
    }

    /// <summary>' (1st and 3rd sizes only)'.</summary>
    private static string OnlySizes(EquatableArray<int> sizes) =>
        sizes.IsEmpty ? "" : $" ({string.Join(" and ", sizes.Select(size => Ordinal(size + 1)))} sizes only)";

    private static string Ordinal(int number) =>
        number + (number % 100 is >= 11 and <= 13 ? "th" : (number % 10) switch { 1 => "st", 2 => "nd", 3 => "rd", _ => "th" });

    private static string Capital(string words) =>
        words.Length > 0 && char.IsLower(words[0]) ? char.ToUpperInvariant(words[0]) + words[1..] : words;

    private string Of(RepeatRows repeat)
    {
        string rows = repeat.Rows.Count switch
        {
            0 when repeat.LastRows is > 1 and var last => $"last {last} rows",
            0 => "last row",
            1 => $"Row {repeat.Rows[0]}",
            _ => $"Rows {NumberWords.List(repeat.Rows)}",
        };
        string words = repeat.IsEven ? "Work even" : repeat.Shaping is { } shaping ? $"Rep {shaping} row" : $"Rep {rows}";
        return $"{words} {HowLong(repeat)}{Ending(repeat)}.{(repeat.Stated is { } stated ? " " + counts.Of(stated) : "")}";
    }

    private static string Ending(RepeatRows repeat) => repeat switch
    {
        { EndingWith: { } row } => $", ending with a Row {row}",
        { EndingSide: FabricSide.Right } => ", ending with a RS row",
        { EndingSide: FabricSide.Wrong } => ", ending with a WS row",
        _ => "",
    };

    private static string HowLong(RepeatRows repeat) => repeat.Until switch
    {
        RowsUntil.MoreRows => $"for {NumberWords.Of(repeat.Count!)} more rows",
        RowsUntil.MoreTimes => $"{NumberWords.Of(repeat.Count!)} more times",
        RowsUntil.RowNumber => $"until Row {NumberWords.Of(repeat.Count!)}",
        RowsUntil.Measures => $"until piece measures {Length(repeat.Millimetres!)}",
        RowsUntil.StitchesRemain => $"until {NumberWords.Of(repeat.Count!)} sts remain",
        _ => "for desired length",
    };

    /// <summary>Whole centimetres where all sizes have them, else millimetres.</summary>
    private static string Length(SizedNumber millimetres)
    {
        bool whole = millimetres.Values.All(value => value is null || value % 10 == 0);
        SizedNumber shown = whole ? millimetres with { Values = Text.EquatableArray.ToEquatableArray(millimetres.Values.Select(value => value / 10)) } : millimetres;
        return $"{NumberWords.Of(shown)} {(whole ? "cm" : "mm")}";
    }
}
