using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Pasting;

/// <summary>What came along with a pasted text and was taken out or put right.</summary>
public enum RepairKind
{
    /// <summary>Tags of a web page.</summary>
    Tags,

    /// <summary>Signs written by name or number for a web page: '&amp;amp;'.</summary>
    Entities,

    /// <summary>The marks of a mail that is quoted: '&gt;'.</summary>
    MailQuotes,

    /// <summary>Lines of a mail that say from whom and when it is.</summary>
    MailHeads,

    /// <summary>Hyphens that only show where a line breaks.</summary>
    SoftHyphens,

    /// <summary>Characters without width, and control characters.</summary>
    Invisible,

    /// <summary>Two letters in one sign, as printers set them: 'ﬁ'.</summary>
    Ligatures,

    /// <summary>Spaces at which a line must not break, thin spaces, tabs.</summary>
    Spaces,

    /// <summary>Fractions in one sign: '½'.</summary>
    Fractions,

    /// <summary>Dots, squares and marks before the lines of a list.</summary>
    Bullets,

    /// <summary>Numbers of pages.</summary>
    PageNumbers,

    /// <summary>Lines at the head or foot of every page.</summary>
    PageHeads,

    /// <summary>Lines broken for a narrow column.</summary>
    Wraps,

    /// <summary>Several empty lines in a row.</summary>
    EmptyLines,
}

/// <summary>One kind of repair.</summary>
/// <param name="Count">How often it was made; above 0.</param>
/// <param name="Lines">The first lines that were dropped whole, as they stood; empty where none was.</param>
public sealed record TextRepair(RepairKind Kind, int Count, EquatableArray<string> Lines);

/// <summary>A pasted text as it can be worked with.</summary>
/// <param name="Text">Lines end with '\n'.</param>
/// <param name="Repairs">Everything that was done, in the order of <see cref="RepairKind"/>; empty where the text was left as it is.</param>
public sealed record TidiedText(string Text, EquatableArray<TextRepair> Repairs);
