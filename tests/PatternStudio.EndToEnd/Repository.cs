namespace PatternStudio.EndToEnd;

/// <summary>Where the sources lie.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(new DirectoryInfo(AppContext.BaseDirectory));

    private static string Find(DirectoryInfo? folder) => folder switch
    {
        null => throw new DirectoryNotFoundException("The tests run outside the repository."),
        _ when File.Exists(Path.Combine(folder.FullName, "PatternStudio.sln")) => folder.FullName,
        _ => Find(folder.Parent),
    };
}
