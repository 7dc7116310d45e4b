using System.Net;
using System.Text.RegularExpressions;

namespace PatternStudio.Craft.Reading.Pasting;

/// <summary>The tags of a page of the web. A '&lt;' that begins no tag is the pattern's own.</summary>
internal static partial class Markup
{
    /// <summary>One tag alone may be a slip; two are a page.</summary>
    private const int Fewest = 2;

    public static string Strip(string text, Repairs repairs)
    {
        int tags = Tag().Count(text);
        if (tags >= Fewest)
        {
            // In a page a line's end is a blank; where there are only bold words, lines are the writer's own.
            if (Breaking().IsMatch(text)) text = LineEnd().Replace(text, " ");
            text = Unseen().Replace(text, "");
            text = Breaking().Replace(text, "\n");
            text = Cell().Replace(text, " ");
            text = Tag().Replace(text, "");
            text = Edges().Replace(text, "\n");
            repairs.Note(RepairKind.Tags, tags);
        }

        return Entity().Replace(text, entity => Decode(entity.Value, repairs));
    }

    private static string Decode(string entity, Repairs repairs)
    {
        string sign = WebUtility.HtmlDecode(entity);
        if (sign != entity) repairs.Note(RepairKind.Entities);
        return sign;
    }

    private const string Names = "a|abbr|article|b|blockquote|body|br|code|dd|div|dl|dt|em|figure|font|footer|h[1-6]|head|header|hr|html|i|img|li|main|meta|ol|p|pre|script|section|small|span|strong|style|sub|sup|table|tbody|td|th|thead|title|tr|u|ul|!--|!doctype";

    [GeneratedRegex($"</?(?:{Names})(?:[\\s/][^<>]*)?/?>|<!--.*?-->|<!doctype[^>]*>", RegexOptions.IgnoreCase | RegexOptions.Singleline, 2_000)]
    private static partial Regex Tag();

    [GeneratedRegex(@"</?(?:p|br|div|li|ul|ol|h[1-6]|tr|table|blockquote|pre|section|article|header|footer|hr|dt|dd)(?:[\s/][^<>]*)?/?>", RegexOptions.IgnoreCase)]
    private static partial Regex Breaking();

    [GeneratedRegex(@"</?t[dh](?:\s[^<>]*)?>", RegexOptions.IgnoreCase)]
    private static partial Regex Cell();

    [GeneratedRegex(@"<(script|style|head|title)\b[^<>]*>.*?</\1\s*>|<!--.*?-->", RegexOptions.IgnoreCase | RegexOptions.Singleline, 2_000)]
    private static partial Regex Unseen();

    [GeneratedRegex(@"\s*\n\s*")]
    private static partial Regex LineEnd();

    [GeneratedRegex(@"[ \t]*\n(?:[ \t]*\n)*[ \t]*")]
    private static partial Regex Edges();

    [GeneratedRegex(@"&(?:#[0-9]{1,7}|#[xX][0-9a-fA-F]{1,6}|[a-zA-Z][a-zA-Z0-9]{1,8});")]
    private static partial Regex Entity();
}
