using System.IO.Compression;
using System.Runtime.InteropServices;
using System.Text.Json;
using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using PatternStudio.Publishing.Scenes;

namespace PatternStudio.Publishing.Tests;

public sealed class ScenePainterTests
{
    private const string Cloth = "Ch 61.\nRow 1: Sc in 2nd ch from hook and in each ch across. (60 sc)\nRow 2: Ch 1, turn, sc in each sc across. (60 sc)\nRows 3-40: Rep Row 2. (60 sc)\n";

    /// <summary>60 chains of the foundation that are stood in, 40 rows of 60 sc and 39 turning chains; the skipped chain may be drawn or not.</summary>
    [Fact]
    public void A_scene_has_every_stitch_with_its_words_and_each_form_once()
    {
        CheckedPattern pattern = PatternCheck.Check(Cloth);
        (JsonElement head, int[] numbers) = Read(Scene(pattern));
        int stitches = head.GetProperty("stitches").GetInt32();
        Assert.InRange(stitches, 60 + (40 * 60) + 39, 61 + (40 * 60) + 40);
        // In a straight cloth stitches differ by where they stand only; a hundredth of rounding makes a few more.
        Assert.InRange(head.GetProperty("forms").GetInt32(), 3, stitches / 10);
        Assert.Equal((7 * stitches) + head.GetProperty("forms").GetInt32() + 1 + head.GetProperty("formStrokes").GetInt32() + head.GetProperty("markStrokes").GetInt32(), numbers.Length);

        JsonElement row3 = head.GetProperty("rows")[3];
        Assert.Equal(("Row 3", "Row 3: 60 stitches"), (row3.GetProperty("label").GetString(), row3.GetProperty("says").GetString()));
        // Row 3 is called for by 'Rows 3-40', and worked by the words of Row 2.
        Assert.StartsWith("Rows 3-40", Cloth[row3.GetProperty("calledFrom").GetInt32()..], StringComparison.Ordinal);
        int first = row3.GetProperty("first").GetInt32() + 1;
        int from = numbers[(3 * stitches) + first], to = numbers[(4 * stitches) + first];
        Assert.Contains("sc in each sc", Cloth[from..to], StringComparison.Ordinal);
        Assert.True(from > Cloth.IndexOf("Row 2", StringComparison.Ordinal));
    }

    [Fact]
    public void A_scene_is_small_beside_the_drawing_in_words()
    {
        CheckedPattern pattern = PatternCheck.Check(Cloth);
        Assert.True(Scene(pattern).Length * 10 < SvgPainter.Paint(Chart.Draw(pattern)).Length);
    }

    [Fact]
    public void A_million_stitches_are_a_few_hundred_blocks()
    {
        CheckedPattern pattern = PatternCheck.Check("Ch 1001.\nRow 1: Sc in 2nd ch from hook and in each ch across. (1000 sc)\nRow 2: Ch 1, turn, sc in each sc across. (1000 sc)\nRows 3-1000: Rep Row 2. (1000 sc)\n");
        Drawing drawing = Chart.Draw(pattern, 0, new ChartStyle { MostCells = 60_000, AllRows = true });
        byte[] scene = ScenePainter.Paint(drawing, pattern.Sizes[0].Fabric);
        (JsonElement head, _) = Read(scene);
        Assert.True(head.GetProperty("overview").GetBoolean());
        Assert.Equal(0, head.GetProperty("stitches").GetInt32());
        Assert.InRange(head.GetProperty("rows").GetArrayLength(), 100, 300);
        Assert.True(scene.Length < 50_000);
    }

    private static byte[] Scene(CheckedPattern pattern) => ScenePainter.Paint(Chart.Draw(pattern), pattern.Sizes[0].Fabric);

    private static (JsonElement Head, int[] Numbers) Read(byte[] scene)
    {
        using var plain = new MemoryStream();
        using (var gzip = new GZipStream(new MemoryStream(scene), CompressionMode.Decompress)) gzip.CopyTo(plain);
        byte[] bytes = plain.ToArray();
        int length = BitConverter.ToInt32(bytes);
        return (JsonDocument.Parse(bytes.AsMemory(4, length)).RootElement, MemoryMarshal.Cast<byte, int>(bytes.AsSpan(4 + length)).ToArray());
    }
}
