using System.Net;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Rounds;

namespace PatternStudio.Web.Tests.Testing;

/// <summary>Whoever knocks with a link that does not open learns nothing: neither that there is a round, nor why it is closed.</summary>
public sealed class ClosedDoorTests(OpenTests program) : IClassFixture<OpenTests>
{
    [Fact]
    public async Task Closed_links_of_every_kind_answer_alike()
    {
        HttpClient stranger = program.Stranger();
        var answers = new Dictionary<string, string>();
        foreach ((string why, string token) in await ClosedAsync())
        {
            foreach (string page in (string[])["", "?size=1&look=dark", "/chart.svg", "/report", $"/report?add={Guid.NewGuid()}", "/thanks", $"/thanks?report={Guid.NewGuid()}"])
                answers[$"{why}{page}"] = await WholeAsync(await stranger.GetAsync($"/t/{token}{page}"));
            using var form = new FormUrlEncodedContent([new("Words", "Fine")]);
            answers[$"{why}, sent"] = await WholeAsync(await stranger.PostAsync($"/t/{token}/report", form));
        }

        string usual = answers["wrong"];
        Assert.Empty(answers.Where(answer => answer.Value != usual).Select(answer => $"{answer.Key}: {answer.Value}"));
        Assert.StartsWith("404", usual);
        Assert.DoesNotContain("Cockle", usual);
        Assert.DoesNotContain("Set-Cookie", usual);
        Assert.Contains("X-Robots-Tag=noindex, nofollow, noarchive", usual);
        Assert.Contains("<meta name=\"robots\" content=\"noindex, nofollow, noarchive\"", usual);
    }

    [Theory]
    [InlineData("")]
    [InlineData("/report")]
    [InlineData("/chart.svg")]
    public async Task No_page_of_a_link_is_indexed_or_kept_on_the_way(string page)
    {
        HttpResponseMessage answer = await program.Stranger().GetAsync($"/t/{(await program.LinkAsync()).Token}{page}");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("noindex, nofollow, noarchive", answer.Headers.GetValues("X-Robots-Tag").Single());
        Assert.Equal("no-store", answer.Headers.CacheControl!.ToString());
        Assert.Equal("no-referrer", answer.Headers.GetValues("Referrer-Policy").Single());
        if (page != "/chart.svg") Assert.Contains("<meta name=\"robots\" content=\"noindex, nofollow, noarchive\"", await answer.Content.ReadAsStringAsync());
    }

    /// <summary>The page is painted once and kept; that somebody may see it is not.</summary>
    [Fact]
    public async Task A_link_that_was_just_open_is_closed_at_once()
    {
        (MadeLink hers, MadeLink other) = (await program.LinkAsync(), await program.LinkAsync("Bea"));
        HttpClient stranger = program.Stranger();
        Assert.Equal(HttpStatusCode.OK, (await stranger.GetAsync($"/t/{hers.Token}")).StatusCode);
        await program.Get<ShareLinks>().RevokeAsync(program.Designer, hers.Id);
        Assert.Equal(HttpStatusCode.NotFound, (await stranger.GetAsync($"/t/{hers.Token}")).StatusCode);
        string page = await stranger.GetStringAsync($"/t/{other.Token}");
        Assert.Contains($"href=\"t/{other.Token}/report\"", page);
        Assert.DoesNotContain(hers.Token, page);
    }

    /// <summary>A wrong token, one that looks like none, and links that were taken back, whose round was ended, has not begun, or whose design is in the bin.</summary>
    private async Task<(string Why, string Token)[]> ClosedAsync()
    {
        MadeLink revoked = await program.LinkAsync();
        await program.Get<ShareLinks>().RevokeAsync(program.Designer, revoked.Id);
        (Guid ended, MadeLink over, _) = await RoundAsync(0);
        await program.Get<TestRounds>().EndAsync(program.Designer, ended);
        (_, MadeLink early, _) = await RoundAsync(20);
        (_, MadeLink binned, Guid design) = await RoundAsync(0);
        await program.Get<DesignDesk>().DeleteAsync(program.Designer, design);
        return [("wrong", new string('A', 43)), ("misshapen", "wrong"), ("revoked", revoked.Token), ("ended", over.Token), ("not begun", early.Token), ("binned", binned.Token)];
    }

    private async Task<(Guid Round, MadeLink Link, Guid Design)> RoundAsync(int daysAhead)
    {
        Guid design = (await program.Get<DesignDesk>().CreateAsync(program.Designer, "Cockle Shawl", OpenTests.Text)).Value;
        DateOnly opens = DateOnly.FromDateTime(DateTime.UtcNow).AddDays(daysAhead);
        Guid round = (await program.Get<TestRounds>().BeginAsync(program.Designer, design, new(1, opens, opens.AddDays(7), 5, [0], AskedFor.Everything, true, ""))).Value;
        return (round, (await program.Get<ShareLinks>().MakeForAsync(program.Designer, round, "Cleo", null)).Value!, design);
    }

    private static async Task<string> WholeAsync(HttpResponseMessage answer) =>
        $"{(int)answer.StatusCode} {string.Join('|', answer.Headers.Concat(answer.Content.Headers).Where(header => header.Key != "Date").OrderBy(header => header.Key, StringComparer.Ordinal).Select(header => $"{header.Key}={string.Join(',', header.Value)}"))} {await answer.Content.ReadAsStringAsync()}";
}
