namespace PatternStudio.Web.Shell.Parts;

/// <summary>A field of a form in which somebody else's correction differs from what is typed.</summary>
public sealed record Differing(string Label, string Theirs, string Mine)
{
    /// <summary>The fields that differ.</summary>
    /// <param name="fields">Each with its label and how it is written in a form.</param>
    public static IReadOnlyList<Differing> Between<T>(T theirs, T mine, params (string Label, Func<T, string> Written)[] fields) =>
        [.. fields.Select(field => new Differing(field.Label, field.Written(theirs), field.Written(mine))).Where(field => field.Theirs != field.Mine)];
}
