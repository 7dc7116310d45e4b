using System.Runtime.CompilerServices;

namespace PatternStudio.Craft.Tests;

/// <summary>Where the repository's own files are, seen from this source file.</summary>
internal static class Repository
{
    /// <summary>The full path of a file or folder of the repository.</summary>
    public static string Path(string relative) => System.IO.Path.GetFullPath(System.IO.Path.Combine(Root(), relative));

    private static string Root([CallerFilePath] string here = "") =>
        System.IO.Path.GetFullPath(System.IO.Path.Combine(System.IO.Path.GetDirectoryName(here)!, "..", ".."));
}
