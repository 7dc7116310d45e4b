namespace PatternStudio.Craft.Text;

/// <summary>A change to the text: the words under <see cref="Span"/> become <see cref="NewText"/>.</summary>
public readonly record struct TextEdit(TextSpan Span, string NewText)
{
    /// <summary>The text with the change made.</summary>
    public string ApplyTo(string content) =>
        string.Concat(content.AsSpan(0, Span.Start), NewText, content.AsSpan(Span.End));
}
