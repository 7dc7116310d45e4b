using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads remarks that patterns make in a row and that instruct nothing countable: 'RS facing', 'pull ring tight', 'weave in ends'.</summary>
internal static class RemarkSteps
{
    /// <summary>How such remarks begin; the words after them go along up to the next comma.</summary>
    private static readonly Phrase[] Beginnings =
    [
        new("with? the? rs|ws|right|wrong"), new("pull|draw|tighten the? ring|tail|magic|beg|up|tight|end|it"), new("weave in|ends|all"), new("mark"), new("block|press|steam"),
        new("leave|leaving a|an|long|about"), new("sew"), new("stuff"), new("cont in|with|working pattern|this|same|spiral|established"), new("change color as|throughout|every"),
        new("do not fasten|cut|break"), new("being careful"), new("note"), new("this is|side|brings|forms|completes|will|makes|gives"), new("now work in|on"), new("as set|established"),
        new("in pattern"), new("work in rnd|row|a|continuous|spiral|pattern"), new("cont"), new("hold"), new("fold"), new("carry"), new("remove"), new("adjust"), new("tie"), new("secure"), new("trim"),
        new("loosely"), new("place"), new("keep"), new("making sure"), new("be sure"), new("make sure"), new("check"), new("count"), new("set aside"), new("first side"), new("end off"),
    ];

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (!Beginnings.Any(cursor.Is)) return false;
        Clauses.TakeToComma(cursor);
        if (cursor.At == from || !RemarkWords.AreRemark(new Cursor(cursor.Context, from, cursor.At, cursor.Depth))) return false;
        steps.Add(new RemarkStep(cursor.Slice(from, cursor.At), cursor.SpanFrom(from)));
        return true;
    }
}
