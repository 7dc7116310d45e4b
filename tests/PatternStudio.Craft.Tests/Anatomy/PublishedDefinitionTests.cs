using System.Runtime.CompilerServices;
using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Tests.Anatomy;

/// <summary>Definitions as patterns and the vocabulary have them.</summary>
public sealed class PublishedDefinitionTests
{
    public static TheoryData<string> RightPatterns => [.. Directory.GetFiles(Folder(), "*.txt").Select(file => Path.GetFileName(file)).Order()];

    public static TheoryData<string> StitchesWithMotions => [.. Vocabulary.Standard.Terms.Where(term => term.Motions.Length > 0).Select(term => term.Id.Value).Order()];

    [Theory]
    [MemberData(nameof(RightPatterns))]
    public void Every_definition_of_a_right_pattern_is_read_whole_and_adds_up(string file)
    {
        Pattern pattern = PatternReader.Read(File.ReadAllText(Path.Combine(Folder(), file)));
        foreach (StitchDefinition definition in pattern.Definitions)
        {
            ReadMotions read = MotionReader.Read(pattern.Source, definition.Body, pattern.Terms.Terminology);
            if (!read.TellsMotions) continue;
            Assert.Equal("", string.Join(" | ", read.Unread.Select(pattern.Source.Slice)));
            Assert.Empty(LoopTroubles.Of(read));
        }
    }

    [Theory]
    [MemberData(nameof(StitchesWithMotions))]
    public void The_vocabulary_tells_motions_that_end_with_one_loop_and_give_its_height(string id)
    {
        StitchTerm term = Vocabulary.Standard.Find(new StitchId(id))!;
        ReadMotions read = MotionReading.Whole(term.Motions);
        Assert.Empty(LoopTroubles.Of(read));
        Assert.Equal(term.HeightInChains, StitchAnatomy.Of(read)!.HeightInChains);
    }

    [Theory]
    [InlineData("front post double crochet: yo, insert hook from front around the post of the st, yo, pull up a loop, [yo, pull through 2 loops] twice.", "2 2 3 2 1")]
    [InlineData("[Yo, insert hook in next st, yo and pull up a loop, yo and draw through 2 loops] once, then the same twice more in the same st; yo and draw through all 4 loops. Bobbles are worked on WS rows and pushed through to the RS.", "2 2 3 2 3 3 4 3 4 4 5 4 1")]
    [InlineData("Insert hook in 2nd ch, yo and pull up a loop, yo and draw through 1 loop (the \"chain\"), yo and draw through 2 loops; *insert hook under 2 loops of the last \"chain\", yo and pull up a loop, yo and draw through 1 loop, yo and draw through 2 loops; rep from * for each fsc.", "1 2 2 1")]
    public void Words_around_a_stitch_are_told_from_its_motions(string words, string loops) => Assert.Equal(loops, MotionReading.Loops(words));

    private static string Folder([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "RightPatterns");
}
