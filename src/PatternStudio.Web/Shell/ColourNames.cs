namespace PatternStudio.Web.Shell;

/// <summary>The colours of a pattern in words.</summary>
internal static class ColourNames
{
    /// <summary>As the pattern names it.</summary>
    /// <param name="unnamed">What to say where it names none.</param>
    public static string Say(string colour, string unnamed) => colour.Length > 0 ? colour : unnamed;

    /// <summary>'A, B'.</summary>
    public static string Say(IEnumerable<string> colours, string unnamed) => string.Join(", ", colours.Select(colour => Say(colour, unnamed)));
}
