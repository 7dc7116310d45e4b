using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Conventions;

/// <summary>What the contributor's guide promises of the engine, held to by test.</summary>
public sealed partial class EngineConventionTests
{
    /// <summary>Each folder depends only on folders to its left.</summary>
    private static readonly string[] Pipeline = ["Text", "Terms", "Anatomy", "Reading", "Working", "Checking", "Measuring", "Sizing", "Shaping", "Charting", "Writing"];

    private static readonly Assembly Engine = typeof(PatternCheck).Assembly;

    private static string Source { get; } = Repository.Path("src/PatternStudio.Craft");

    public static TheoryData<string> Folders => [.. Directory.EnumerateDirectories(Source).Select(folder => Path.GetFileName(folder)).Where(folder => folder is not ("bin" or "obj")).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_depends_only_on_folders_to_its_left(string folder)
    {
        int place = Array.IndexOf(Pipeline, folder);
        Assert.True(place >= 0, $"{folder} has no place in the pipeline.");
        IEnumerable<string> wrong = Files(folder).SelectMany(file => Named().Matches(File.ReadAllText(file)).Select(match => match.Groups[1].Value).Distinct()
            .Where(named => Array.IndexOf(Pipeline, named) > place).Select(named => $"{Path.GetFileName(file)} uses {named}"));
        Assert.Equal([], wrong);
    }

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_file_is_in_the_namespace_of_its_folder(string folder)
    {
        IEnumerable<string> wrong = Files(folder).Where(file => !File.ReadAllText(file).Contains($"namespace PatternStudio.Craft.{Path.GetRelativePath(Source, Path.GetDirectoryName(file)!).Replace(Path.DirectorySeparatorChar, '.')};", StringComparison.Ordinal));
        Assert.Equal([], wrong.Select(file => Path.GetFileName(file)));
    }

    [Fact]
    public void The_engine_references_no_framework_and_no_data_store()
    {
        string[] names = [.. Engine.GetReferencedAssemblies().Select(reference => reference.Name!)];
        Assert.DoesNotContain(names, name => name.StartsWith("Microsoft.", StringComparison.Ordinal) || name.Contains("Sqlite", StringComparison.Ordinal) || name.StartsWith("MudBlazor", StringComparison.Ordinal) || name is "System.Net.Http" or "System.IO.FileSystem");
    }

    /// <summary>Its own embedded term files are the one thing that it reads (Terms/TermFiles).</summary>
    [Fact]
    public void The_engine_reads_no_files_no_clock_and_no_chance()
    {
        IEnumerable<string> wrong = Files("").SelectMany(file => Outside().Matches(Code(file)).Select(match => $"{Path.GetFileName(file)}: {match.Value}"));
        Assert.Equal([], wrong);
    }

    [Fact]
    public void Public_types_are_sealed_static_or_abstract_records()
    {
        IEnumerable<string> wrong = Engine.GetExportedTypes().Where(type => type is { IsClass: true, IsSealed: false } && !(type.IsAbstract && IsRecord(type))).Select(type => type.Name);
        Assert.Equal([], wrong);
    }

    [Fact]
    public void No_static_field_can_change()
    {
        IEnumerable<string> wrong = Engine.GetTypes().Where(IsOurs)
            .SelectMany(type => type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            .Where(field => !field.IsLiteral && !field.IsDefined(typeof(CompilerGeneratedAttribute)) && !field.Name.StartsWith('<') && !field.IsInitOnly)
            .Select(field => $"{field.DeclaringType!.Name}.{field.Name}");
        Assert.Equal([], wrong);
    }

    [Fact]
    public void Public_properties_can_be_set_only_while_an_object_is_made()
    {
        IEnumerable<string> wrong = Engine.GetExportedTypes().SelectMany(type => type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(property => property.SetMethod is { IsPublic: true } set && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)))
            .Select(property => $"{property.DeclaringType!.Name}.{property.Name}");
        Assert.Equal([], wrong);
    }

    [Fact]
    public void Files_stay_small()
    {
        Assert.Equal([], Files("").Where(file => File.ReadAllLines(file).Length > 420).Select(file => Path.GetFileName(file)));
        int[] lengths = [.. Files("").Select(file => File.ReadAllLines(file).Length).Order()];
        Assert.InRange(lengths[lengths.Length / 2], 1, 120);
    }

    private static bool IsOurs(Type type) => !type.IsDefined(typeof(CompilerGeneratedAttribute)) && type.Namespace?.StartsWith("PatternStudio.", StringComparison.Ordinal) == true;

    private static bool IsRecord(Type type) => type.GetMethod("<Clone>$") is not null;

    private static IEnumerable<string> Files(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Source, folder), "*.cs", SearchOption.AllDirectories).Where(file => !Generated().IsMatch(Path.GetRelativePath(Source, file)));

    /// <summary>The code without its remarks.</summary>
    private static string Code(string file) => string.Join('\n', File.ReadAllLines(file).Where(line => !line.TrimStart().StartsWith("//", StringComparison.Ordinal)));

    [GeneratedRegex(@"(?:PatternStudio\.)?Craft\.(Text|Terms|Anatomy|Reading|Working|Checking|Measuring|Sizing|Shaping|Charting|Writing)\b")]
    private static partial Regex Named();

    [GeneratedRegex(@"\b(?:DateTime|DateTimeOffset|TimeProvider|Stopwatch|Random|Guid\.NewGuid|Environment|HttpClient|FileStream|DirectoryInfo|FileInfo)\b|\b(?:File|Directory|Console)\.\w+\(|\bSystem\.IO\b")]
    private static partial Regex Outside();

    [GeneratedRegex(@"^(bin|obj)[/\\]")]
    private static partial Regex Generated();
}
