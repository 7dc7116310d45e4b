using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Tests.Vocabularies;

public sealed class VocabularyTests
{
    private static readonly Vocabulary Words = Vocabulary.Standard;

    /// <summary>Terms by country: funcrochetdesigns.com; ruleofthejewel.blog/no/post/å-lese-engelske-hekleoppskrifter; 'together' names: doradoes.co.uk.</summary>
    [Theory]
    [InlineData("slst", "sl st", "ss")]
    [InlineData("sc", "sc", "dc")]
    [InlineData("hdc", "hdc", "htr")]
    [InlineData("dc", "dc", "tr")]
    [InlineData("tr", "tr", "dtr")]
    [InlineData("dtr", "dtr", "ttr")]
    [InlineData("trtr", "trtr", "qtr")]
    [InlineData("sc2tog", "sc2tog", "dc2tog")]
    [InlineData("hdc2tog", "hdc2tog", "htr2tog")]
    [InlineData("dc3tog", "dc3tog", "tr3tog")]
    [InlineData("fpdc", "FPdc", "FPtr")]
    public void Each_stitch_has_its_name_in_both_terminologies(string id, string us, string uk)
    {
        StitchTerm term = Words.Find(new StitchId(id))!;
        Assert.Equal(us, term.Abbreviation(Terminology.Us));
        Assert.Equal(uk, term.Abbreviation(Terminology.Uk));
    }

    /// <summary>Heights in turning chains: dummies.com, how to crochet a turning chain; trtr: crochetforall.com; sc and hdc: knotions.com.</summary>
    [Theory]
    [InlineData("slst", 0)]
    [InlineData("sc", 1)]
    [InlineData("hdc", 2)]
    [InlineData("dc", 3)]
    [InlineData("tr", 4)]
    [InlineData("dtr", 5)]
    [InlineData("trtr", 6)]
    public void Plain_stitches_have_the_height_of_their_turning_chain(string id, double chains) =>
        Assert.Equal(chains, Words.Find(new StitchId(id))!.HeightInChains);

    [Theory]
    [InlineData("half double crochet", Terminology.Us, "hdc")]
    [InlineData("Double Crochet", Terminology.Us, "dc")]
    [InlineData("double crochet", Terminology.Uk, "sc")]
    [InlineData("d c", Terminology.Us, "dc")]
    [InlineData("s d c", Terminology.Us, "hdc")]
    [InlineData("tr tr c", Terminology.Us, "trtr")]
    [InlineData("long treble", Terminology.Uk, "tr")]
    [InlineData("V-stitches", Terminology.Us, "vst")]
    [InlineData("popcorns", Terminology.Us, "popcorn")]
    [InlineData("back post double crochet", Terminology.Us, "bpdc")]
    [InlineData("raised treble front", Terminology.Uk, "fpdc")]
    [InlineData("single crochet 2 together", Terminology.Us, "sc2tog")]
    public void Names_are_found_however_they_are_spelled(string name, Terminology terms, string id) =>
        Assert.Equal(id, Words.Meaning(name, terms)?.Value);

    /// <summary>'n together' takes n stitches and makes one: it removes n - 1 (issuhub.com/view/index/11046).</summary>
    [Theory]
    [InlineData("sc2tog", 2)]
    [InlineData("dc5tog", 5)]
    public void N_together_takes_n_places_and_makes_one(string id, int takes)
    {
        StitchTerm term = Words.Find(new StitchId(id))!;
        Assert.Equal((takes, 1), (term.Takes, term.Makes));
    }

    [Fact]
    public void A_cluster_of_any_number_of_legs_is_known() =>
        Assert.Equal("dc", Words.Find(Vocabulary.Cluster(7, StitchId.Double))!.Base.Value);

    [Fact]
    public void No_name_means_two_stitches_in_one_terminology() =>
        Assert.All([Terminology.Us, Terminology.Uk], terms =>
            Assert.Empty(Words.Terms.SelectMany(term => term.Names(terms).Select(name => (term.Id, name))).Where(pair => Words.Meaning(pair.name, terms) is not { } meant || (meant != pair.Id && Words.Find(meant)!.Base != Words.Find(pair.Id)!.Base)).Select(pair => $"{terms}: '{pair.name}' of {pair.Id} means {Words.Meaning(pair.name, terms)}")));
}
