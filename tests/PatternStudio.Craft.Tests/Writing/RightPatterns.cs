using System.Runtime.CompilerServices;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Tests.Writing;

/// <summary>The right patterns, as the writing tests take them.</summary>
public static class RightPatterns
{
    public static TheoryData<string> Names => [.. Directory.GetFiles(Folder(), "*.txt").Select(file => Path.GetFileNameWithoutExtension(file)).Order()];

    public static Pattern Read(string name) => PatternReader.Read(File.ReadAllText(Path.Combine(Folder(), name + ".txt")));

    private static string Folder([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "RightPatterns");
}
