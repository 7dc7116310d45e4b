using System.Collections;
using System.Resources;
using System.Text.RegularExpressions;
using PatternStudio.Craft.Checking;
using PatternStudio.Web.Features.Accounts;
using PatternStudio.Web.Features.Designs;
using PatternStudio.Web.Features.Desk;
using PatternStudio.Web.Features.Help;
using PatternStudio.Web.Features.Settings;
using PatternStudio.Web.Features.SwatchBook;
using PatternStudio.Web.Features.Testing;
using PatternStudio.Web.Features.Tour;
using PatternStudio.Web.Features.YarnShelf;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Tests.Shell;

/// <summary>Words are named by keys: a key without words would show itself to the designer.</summary>
public sealed partial class WordsTests
{
    public static TheoryData<Type, string> Files => new()
    {
        { typeof(ShellWords), "Shell" },
        { typeof(AccountWords), "Features/Accounts" },
        { typeof(DesignsWords), "Features/Designs" },
        { typeof(DeskWords), "Features/Desk" },
        { typeof(SwatchWords), "Features/SwatchBook" },
        { typeof(TestingWords), "Features/Testing" },
        { typeof(YarnWords), "Features/YarnShelf" },
        { typeof(SettingsWords), "Features/Settings" },
        { typeof(HelpWords), "Features/Help" },
        { typeof(TourWords), "Features/Tour" },
    };

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_key_that_the_pages_use_has_words(Type words, string folder)
    {
        HashSet<string> known = KeysOf(words);
        Assert.DoesNotContain(KeysIn(folder), key => !known.Contains(key));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_key_that_has_words_is_used(Type words, string folder)
    {
        string sources = string.Concat(SourcesIn(folder).Select(File.ReadAllText));
        string[] begun = [.. BegunKey().Matches(sources).Select(match => match.Groups[1].Value)];
        Assert.DoesNotContain(KeysOf(words), key =>
            !sources.Contains($"\"{key}\"", StringComparison.Ordinal)
            && !begun.Any(start => key.StartsWith(start, StringComparison.Ordinal))
            && !Enum.TryParse<Severity>(key, out _) && !Enum.TryParse<SavedState>(key, out _));
    }

    private static HashSet<string> KeysOf(Type words) =>
        [.. new ResourceManager(words).GetResourceSet(System.Globalization.CultureInfo.InvariantCulture, true, false)!
            .Cast<DictionaryEntry>().Select(entry => (string)entry.Key)];

    private static IEnumerable<string> KeysIn(string folder) =>
        SourcesIn(folder).SelectMany(file => Key().Matches(File.ReadAllText(file))).Select(match => match.Groups[1].Value).Distinct();

    private static IEnumerable<string> SourcesIn(string folder)
    {
        string web = Path.Combine(Root(new DirectoryInfo(AppContext.BaseDirectory)), "src", "PatternStudio.Web", folder);
        return Directory.EnumerateFiles(web, "*.*", SearchOption.AllDirectories)
            .Where(file => file.EndsWith(".razor", StringComparison.Ordinal) || file.EndsWith(".cs", StringComparison.Ordinal));
    }

    private static string Root(DirectoryInfo folder) =>
        File.Exists(Path.Combine(folder.FullName, "PatternStudio.sln")) ? folder.FullName : Root(folder.Parent!);

    [GeneratedRegex(@"Words\[""(\w+)""")]
    private static partial Regex Key();

    [GeneratedRegex(@"\$""(\w+)\{")]
    private static partial Regex BegunKey();
}
