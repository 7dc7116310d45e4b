using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Sample;

/// <summary>A design of the sample studio: a file of the samples folder, and the swatch worked for it.</summary>
/// <param name="File">Name of the file without its ending.</param>
/// <param name="Swatch">Its yarn and date are filled in when loaded.</param>
internal sealed record SampleDesign(string File, string Title, DesignState State, YarnDetails Yarn, SwatchDetails Swatch)
{
    /// <summary>Invented designs with invented swatches; the stitches and rows agree with the gauge that each pattern states.</summary>
    public static readonly IReadOnlyList<SampleDesign> All =
    [
        new("straight-rows-dishcloth", "Tidewater Dishcloth", DesignState.Published, SampleYarns.TidelineCotton,
            Worked(14, 14, 7.6, 5, "Worked in Row 3, washed once and dried flat.")),
        new("diagonal-square-washcloth", "Kelp Bed Washcloth", DesignState.Testing, SampleYarns.TidelineCotton,
            Worked(17, 17, 8.4, 4.5, "Puff rows and single crochet rows in turn.")),
        new("flat-circle-coaster", "Harbour Light Coaster", DesignState.Published, SampleYarns.TidelineCotton,
            Worked(13, 7, 5.5, 4, "Double crochet.") with { Stitch = "dc" }),
        new("granny-square", "Pier Lights Granny Square", DesignState.Writing, SampleYarns.QuaysideWool,
            Worked(17, 7, 3.5, 4, "Double crochet, pinned out.") with { Stitch = "dc" }),
        new("granny-square-uk", "Pebble Beach Square", DesignState.Writing, SampleYarns.QuaysideWool,
            Worked(16, 6.5, 3.4, 4, "Trebles in UK terms, pinned out.") with { Stitch = "dc" }),
        new("hat-three-sizes", "Gull Point Beanie", DesignState.Testing, SampleYarns.QuaysideAran,
            Worked(15, 11, 5.2, 5, "Half double crochet in rounds.") with { Stitch = "hdc" }),
        new("lace-edging", "Foam Line Edging", DesignState.Idea, SampleYarns.FineCotton,
            Worked(18, 20, 2.6, 2.5, "Single crochet, starched and pinned.") with { Stitch = "sc" }),
    ];

    /// <summary>The pattern as the samples folder has it.</summary>
    public string ReadText()
    {
        using Stream stream = typeof(SampleDesign).Assembly.GetManifestResourceStream($"Samples/{File}.txt")
            ?? throw new InvalidOperationException($"The program was built without the sample pattern '{File}.txt'.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    /// <summary>A swatch over 10 × 10 cm.</summary>
    private static SwatchDetails Worked(double stitches, double rows, double grams, double hook, string note) =>
        new(stitches, rows, 10, 10, grams, hook, null, note, default);
}
