using System.Text.RegularExpressions;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>Where the cursor stands in the line that is being written.</summary>
/// <param name="Spot">What can stand there.</param>
/// <param name="From">For a place: where its words begin, behind 'in'; else the line's end.</param>
/// <param name="Begun">The row as far as its steps are whole, with its heading, the steps of an open repeat told once; empty where none is.</param>
/// <param name="Steps">The same as it is written.</param>
internal sealed partial record LineSpot(Spot Spot, int From, string Begun, string Steps)
{
    /// <param name="line">The line up to the cursor.</param>
    /// <param name="isStitch">True for the names of stitches that are worked in a place.</param>
    public static LineSpot Of(string line, Func<string, bool> isStitch)
    {
        int heading = Heading().Match(line).Length, end = EndOfSteps(line, heading, out bool inBrackets);
        if (AfterIn().Match(line) is { Success: true } place) return new(Spot.Place, place.Groups["place"].Index, Whole(line, heading, end), line[..end]);
        Spot spot = SpotIn(line, heading, end, inBrackets, isStitch);
        if (spot == Spot.Within && line[^1] == ' ' && !inBrackets) end = line.Length;
        return new(spot, line.Length, Whole(line, heading, end), line[..end]);
    }

    private static Spot SpotIn(string line, int heading, int end, bool inBrackets, Func<string, bool> isStitch)
    {
        if (InNumbers().IsMatch(line)) return Spot.Numbers;
        if (heading == 0 && end == 0) return Spot.RowStart;
        if (line.Length == heading || AtStep().IsMatch(line)) return Spot.Step;
        if (AfterBrackets().IsMatch(line)) return Spot.AfterBrackets;
        return !inBrackets && AfterStitch().Match(line[end..]) is { Success: true } stitch && isStitch(stitch.Groups["stitch"].Value) ? Spot.AfterStitch : Spot.Within;
    }

    /// <summary>True where the line has a row's heading.</summary>
    public static bool HasHeading(string line) => Heading().IsMatch(line);

    /// <summary>The row begun, where any step of it is whole.</summary>
    private static string Whole(string line, int heading, int end) => end > heading ? Opened(line[..end]) : "";

    /// <summary>The steps of a repeat that is not closed yet are worked once, as the maker comes to them first: its star and its bracket are left away.</summary>
    private static string Opened(string steps)
    {
        int star = OpenStar(steps);
        if (star >= 0) steps = steps.Remove(star, 1).Insert(star, " ");
        int open = steps.LastIndexOf('[');
        return open >= 0 && steps.IndexOf(']', open) < 0 ? steps.Remove(open, 1).Insert(open, " ") : steps;
    }

    /// <summary>The star that nothing repeats yet; -1 for none.</summary>
    public static int OpenStar(string line)
    {
        int star = line.LastIndexOf('*');
        return star >= 0 && !Repeats().IsMatch(line) ? star : -1;
    }

    /// <summary>Where the last whole step ends. Commas inside round brackets part no steps of the row: they are in a size list, or in a group worked in one place.</summary>
    private static int EndOfSteps(string line, int heading, out bool inBrackets)
    {
        int depth = 0, end = heading, opened = heading;
        for (int at = heading; at < line.Length; at++)
        {
            if (line[at] == '(' && depth++ == 0) opened = at;
            else if (line[at] == ')' && depth > 0) depth--;
            else if (depth == 0 && line[at] is ',' or ';' or '.' or '*') end = at;
        }

        inBrackets = depth > 0;
        return inBrackets ? Math.Min(end, opened) : end;
    }

    /// <summary>'Sc in', 'sk', with what is typed of the place after it.</summary>
    [GeneratedRegex(@"\b(?:in|into|skip|sk|miss|(?<=\b[FB]P\w*\s+)around)\s+(?<place>(?:[\p{L}\d-]+\s*(?:\((?:[\d\s,]*)(?:\)\s*|$))*){0,5})$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex AfterIn();

    /// <summary>'4 (6, ', '(20, 24': a comma follows no single number of stitches.</summary>
    [GeneratedRegex(@"\d\s*[(\[][\d\s,]*$|[(\[]\s*\d+\s*,[\d\s,]*$|[(\[]\s*\d+\s*\([\d\s,]*\)?\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex InNumbers();

    [GeneratedRegex(@"(?:[(*\[]|[,;.:]\s)\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex AtStep();

    [GeneratedRegex(@"\]\s+(?:\d[\d\s(,)]*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex AfterBrackets();

    /// <summary>'Sc ', '[2 dc ': of a step nothing but how many and what.</summary>
    [GeneratedRegex(@"^[,;.*:\s\[]*(?:\d+\s+)?(?<stitch>[\p{L}][\p{L}\d-]*)\s+$", RegexOptions.CultureInvariant)]
    private static partial Regex AfterStitch();

    [GeneratedRegex(@"\*[^*]*\brep(?:eat)?\b|\brep(?:eat)?\s+(?:from\s+)?\*[^*]*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Repeats();

    [GeneratedRegex(@"^\s*(?:(?:Row|Rnd|Round|Rows|Rnds|Rounds)\b[^:.]{0,40}[:.]|\d+(?:st|nd|rd|th) (?:row|rnd|round)\b[^:.]{0,20}[:.]?)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Heading();
}
