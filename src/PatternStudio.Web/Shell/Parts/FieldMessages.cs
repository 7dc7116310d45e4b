using PatternStudio.Studio;

namespace PatternStudio.Web.Shell.Parts;

/// <summary>Looks up what a form's fields were told.</summary>
internal static class FieldMessages
{
    /// <summary>The message for one field, whatever its case; null for none.</summary>
    public static string? For(this IReadOnlyList<FieldMessage> messages, string field) =>
        messages.FirstOrDefault(message => message.Field.Equals(field, StringComparison.OrdinalIgnoreCase))?.Message;
}
