using System.Globalization;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Tests.Reading;

/// <summary>
/// Measures the reader on real instructions of 1854 to 1953 in the public domain. The texts are in the folder ../shared/corpus beside the repository and not part
/// of it; without them this test says that it was skipped.
/// </summary>
public sealed class CorpusTests(ITestOutputHelper output)
{
    private const double Wanted = 0.85;
    private static readonly string Folder = Repository.Path("../shared/corpus");

    [Fact]
    public void Most_rows_of_the_old_booklets_are_read_whole()
    {
        Assert.SkipUnless(Directory.Exists(Folder), $"SKIPPED: the corpus of old booklets is not beside the repository (looked for '{Folder}').");
        int rows = 0, read = 0;
        foreach (string path in Directory.EnumerateFiles(Folder, "*.txt").Order(StringComparer.Ordinal))
        {
            (int has, int whole) = Measure(path);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileName(path),-45} {has,4} rows, {whole,4} read"));
            (rows, read) = (rows + has, read + whole);
        }
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"in all {rows} rows, {read} read: {100.0 * read / rows:0.0} %"));
        Assert.True(read >= Wanted * rows, $"{read} of {rows} rows are read whole.");
    }

    private static (int Rows, int Read) Measure(string path)
    {
        string[] lines = File.ReadAllLines(path);
        Terminology terms = lines.Any(line => line.StartsWith("# terms: UK", StringComparison.Ordinal)) ? Terminology.Uk : Terminology.Us;
        Pattern pattern = PatternReader.Read(string.Join('\n', lines.Where(line => !line.StartsWith('#'))), terms);
        List<PieceItem> items = [.. pattern.Pieces.SelectMany(piece => piece.Items).Where(item => item is RowInstruction or RepeatRows or Passage { IsRemark: false })];
        return (items.Count, items.Count(item => item is RepeatRows || (item is RowInstruction row && !row.Steps.Any(HoldsUnread))));
    }

    private static bool HoldsUnread(Step step) => step switch
    {
        UnreadStep => true,
        GroupStep group => group.Steps.Any(HoldsUnread),
        RepeatStep repeat => repeat.Steps.Any(HoldsUnread) || repeat.Ending.Any(HoldsUnread),
        _ => false,
    };
}
