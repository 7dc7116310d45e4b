using System.Text.RegularExpressions;

namespace PatternStudio.Craft.Reading.Pasting;

/// <summary>
/// Joins lines that were broken for a narrow column. A line's end is the column's where the next word had no room, or where nobody would
/// end a line: in an open bracket, after 'in each', before 'and in'.
/// </summary>
internal static partial class LineWraps
{
    /// <summary>Columns are 30 to 130 characters wide; two lines at least reach that far.</summary>
    private const int Narrowest = 30, Widest = 130, Ragged = 14;

    public static List<string> Join(List<string> lines, Repairs repairs)
    {
        int column = ColumnOf(lines);
        var joined = new List<string>();
        string last = "";
        foreach (string line in lines)
        {
            if (joined.Count > 0 && GoesOn(joined[^1], last, line, column))
            {
                joined[^1] = joined[^1].TrimEnd() + (Parted().IsMatch(joined[^1]) ? "" : " ") + line.Trim();
                repairs.Note(RepairKind.Wraps);
            }
            else
            {
                joined.Add(line);
            }

            last = line.Trim();
        }

        return joined;
    }

    /// <summary>How wide the column was; 0 where there was none.</summary>
    private static int ColumnOf(List<string> lines)
    {
        int[] lengths = [.. lines.Select(line => line.Trim().Length).OrderDescending()];
        int widest = lengths.FirstOrDefault(length => length <= Widest && lengths.Count(other => other <= length && other > length - Ragged) >= 2);
        return lengths.Count(length => length > Widest) * 4 > lengths.Count(length => length > 0) || widest < Narrowest ? 0 : widest;
    }

    /// <param name="whole">The line so far, with what was joined to it.</param>
    /// <param name="last">Its last part, as wide as it stood.</param>
    private static bool GoesOn(string whole, string last, string next, int column)
    {
        string follows = next.Trim();
        if (last.Length == 0 || follows.Length == 0 || Begins().IsMatch(follows) || Label().IsMatch(last)) return false;
        bool row = Row().IsMatch(whole);
        if (row && IsOpen(whole)) return true;
        if (row && Unfinished().IsMatch(last)) return true;
        bool ended = SentenceEnd().IsMatch(last);
        if (row && !ended && Continuing().IsMatch(follows)) return true;
        bool full = column > 0 && last.Length <= column && last.Length + 1 + FirstWord(follows) > column;
        // A count in brackets ends a row, and a capital after it begins something else.
        if (!full || (Counted().IsMatch(last) && char.IsUpper(follows[0]))) return false;
        return row || Unfinished().IsMatch(last) || (ended ? char.IsLower(follows[0]) : !char.IsUpper(follows[0]));
    }

    private static int FirstWord(string line) => line.IndexOf(' ', StringComparison.Ordinal) is var end && end < 0 ? line.Length : end;

    private static bool IsOpen(string line) =>
        line.Count(sign => sign is '(' or '[') > line.Count(sign => sign is ')' or ']');

    [GeneratedRegex(@"^\W{0,3}(?:rows?|rnds?|rounds?|r)\.?\s*[0-9]|^\W{0,3}(?:next|foundation|set-?up|first|last|[0-9]+(?:st|nd|rd|th))\s.{0,12}?(?:row|rnd|round)", RegexOptions.IgnoreCase)]
    private static partial Regex Row();

    /// <summary>Words and signs that begin a line of their own, however narrow the column.</summary>
    [GeneratedRegex(@"^\W{0,3}(?:rows?|rnds?|rounds?|r)\.?\s*[0-9]|^(?:next|foundation|set-?up)\s.{0,12}?(?:row|rnd|round)|^[0-9]+(?:st|nd|rd|th)\s+(?:row|rnd|round)|^(?:fasten off|weave in|finishing|note|notes|gauge|materials|size|sizes|yarn|hook|abbreviations|special|instructions|pattern)\b|^(?-i:(?:With [A-Z], c|C)h [0-9]|[A-Z][\w ]{2,30}:|[A-Z][\w'’-]*(?: [A-Z(][\w'’)-]*){0,3}$)|^[•*-]\s|^[0-9]+[.)]\s", RegexOptions.IgnoreCase)]
    private static partial Regex Begins();

    /// <summary>A heading or a label alone on its line.</summary>
    [GeneratedRegex(@"^[\w &'’()-]{1,40}:$|^[A-Z0-9 &'’-]+$")]
    private static partial Regex Label();

    [GeneratedRegex(@"(?:\b(?:in|next|each|and|the|of|from|to|into|a|an|or|skip|sk|rep|first|last|same|[0-9]+(?:st|nd|rd|th))|[,;*(\[])$", RegexOptions.IgnoreCase)]
    private static partial Regex Unfinished();

    [GeneratedRegex(@"^(?:and|in|from|to|across|around|of|each|next|ch|chs|st|sts|sc|hdc|dc|tr|sp|sps|times|twice|more)\b(?!\s*[0-9]+\s*[:.])")]
    private static partial Regex Continuing();

    [GeneratedRegex(@"[)\]]\.?$")]
    private static partial Regex Counted();

    [GeneratedRegex(@"[.!?:)\]]$")]
    private static partial Regex SentenceEnd();

    /// <summary>'ch-' at a line's end goes on with '1 sp' without a blank.</summary>
    [GeneratedRegex(@"\w-\s*$")]
    private static partial Regex Parted();
}
