using PatternStudio.Studio;

namespace PatternStudio.Web.Shell;

/// <summary>Reads the fields of a form one by one and gathers what is wrong with which.</summary>
public sealed class TypedForm
{
    private readonly List<FieldMessage> wrong = [];

    /// <summary>What was wrong; empty where all was read.</summary>
    public IReadOnlyList<FieldMessage> Wrong => wrong;

    /// <summary>A number that must be there.</summary>
    /// <param name="missing">What to say where the field is empty.</param>
    public double Needed(string field, string written, Func<string, TypedNumber> read, string missing)
    {
        if (!string.IsNullOrWhiteSpace(written)) return Optional(field, written, read) ?? 0;
        wrong.Add(new(field, missing));
        return 0;
    }

    /// <summary>A number that may be left out.</summary>
    public double? Optional(string field, string written, Func<string, TypedNumber> read)
    {
        if (string.IsNullOrWhiteSpace(written)) return null;
        TypedNumber number = read(written);
        if (number.Trouble is null) return number.Value;
        wrong.Add(new(field, number.Trouble));
        return null;
    }

    public void Refuse(string field, string message) => wrong.Add(new(field, message));
}
