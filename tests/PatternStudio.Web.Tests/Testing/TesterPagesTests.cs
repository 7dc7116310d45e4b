using System.Net;
using System.Text.RegularExpressions;
using PatternStudio.Studio.Rounds;

namespace PatternStudio.Web.Tests.Testing;

public sealed partial class TesterPagesTests(OpenTests program) : IClassFixture<OpenTests>
{
    [Fact]
    public async Task The_sheet_is_plain_and_private()
    {
        MadeLink link = await program.LinkAsync();
        HttpResponseMessage answer = await program.Stranger().GetAsync($"/t/{link.Token}");
        string page = await answer.Content.ReadAsStringAsync();

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("no-store", answer.Headers.CacheControl!.ToString());
        Assert.Equal("no-referrer", answer.Headers.GetValues("Referrer-Policy").Single());
        Assert.Contains("noindex", answer.Headers.GetValues("X-Robots-Tag").Single());
        Assert.Contains("<strong>Row 2:</strong> Ch 1, turn, sc in each sc across. (16 sc)", page);
        Assert.Contains("Hello &lt;b&gt;all&lt;/b&gt;", page);
        Assert.DoesNotContain("blazor", page, StringComparison.OrdinalIgnoreCase);
        Assert.Equal("scripts/testing.js", Assert.Single(Scripts().Matches(page)).Groups[1].Value);
    }

    [Fact]
    public async Task Terms_letters_and_colours_are_chosen_in_the_address()
    {
        MadeLink link = await program.LinkAsync();
        string page = await program.Stranger().GetStringAsync($"/t/{link.Token}?terms=uk&look=dark&letters=large");
        Assert.Contains("dc in each dc across", page);
        Assert.Contains("data-scheme=\"dark\"", page);
        Assert.Contains("class=\"large\"", page);
        Assert.Contains("href=\"styles/dark.css\" />", page);
        Assert.Contains("?terms=uk&amp;letters=large&amp;look=dark", page);
        HttpResponseMessage chart = await program.Stranger().GetAsync($"/t/{link.Token}/chart.svg?terms=uk");
        Assert.Equal("image/svg+xml", chart.Content.Headers.ContentType!.MediaType);
    }

    /// <summary>No script runs there: the browser itself decides whether it loads the dark colours.</summary>
    [Fact]
    public async Task Colours_follow_the_device_unless_chosen()
    {
        MadeLink link = await program.LinkAsync();
        string unchosen = await program.Stranger().GetStringAsync($"/t/{link.Token}");
        Assert.Contains("data-scheme=\"device\"", unchosen);
        Assert.Contains("href=\"styles/dark.css\" media=\"(prefers-color-scheme: dark)\"", unchosen);
        string light = await program.Stranger().GetStringAsync($"/t/{link.Token}?look=light");
        Assert.Contains("data-scheme=\"light\"", light);
        Assert.DoesNotContain("dark.css", light);
    }

    [Fact]
    public async Task A_report_with_faults_comes_back_whole_and_is_sent_at_the_second_try()
    {
        MadeLink link = await program.LinkAsync("Bea");
        HttpClient stranger = program.Stranger();
        var fields = new Dictionary<string, string>
        {
            ["Size"] = "0", ["Stitches"] = "17", ["Rows"] = "many", ["OverCm"] = "4 in", ["YarnGrams"] = "0.8 oz", ["BallMetres"] = "93 yd", ["BallGrams"] = "50", ["Minutes"] = "1:20",
            ["Remarks[2].Row"] = "Row 2", ["Remarks[2].Text"] = "<script>alert(1)</script>", ["Words"] = "Fine & good",
        };

        HttpResponseMessage faulty = await PostAsync(stranger, link.Token, fields);
        string page = await faulty.Content.ReadAsStringAsync();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, faulty.StatusCode);
        Assert.Contains("value=\"many\"", page);
        Assert.Contains("value=\"93 yd\"", page);
        Assert.Contains("&lt;script&gt;alert(1)&lt;/script&gt;", page);
        Assert.Contains("id=\"Rows-wrong\"", page);
        Assert.Empty((await program.Get<TestersDoor>().OpenAsync(link.Token))!.Reports);

        HttpResponseMessage sent = await PostAsync(stranger, link.Token, new(fields) { ["Rows"] = "18" });
        Assert.Equal(HttpStatusCode.Redirect, sent.StatusCode);
        string thanks = await stranger.GetStringAsync(sent.Headers.Location);
        // 16 sts at 17 to 4 in (10.16 cm): 16 · 10.16 ÷ 17 = 9.56 cm; 18 rows at 18 to 4 in: 10.16 cm.
        Assert.Contains("9.5 cm (3¾ in)", WebUtility.HtmlDecode(thanks));
        Assert.Contains("The printed gauge makes 10 cm (4 in).", WebUtility.HtmlDecode(thanks));
        OpenLink open = (await program.Get<TestersDoor>().OpenAsync(link.Token))!;
        ReportDetails told = Assert.Single(open.Reports).Details;
        Assert.Equal((17, 18, 10.16, 80), (told.Stitches, told.Rows, told.OverCm, told.Minutes));
        Assert.Equal(85.0392, told.BallMetres!.Value, 4);
        Assert.Equal(new RemarkDetails("Row 2", "", "<script>alert(1)</script>"), Assert.Single(open.Remarks).Details);
        Assert.Contains("Add to your report of", await stranger.GetStringAsync($"/t/{link.Token}"));
    }

    [Fact]
    public async Task Without_the_seal_of_the_form_nothing_is_taken_and_nothing_lost()
    {
        MadeLink link = await program.LinkAsync("Cleo");
        HttpResponseMessage answer = await program.Stranger().PostAsync($"/t/{link.Token}/report", new FormUrlEncodedContent(new Dictionary<string, string> { ["Stitches"] = "17.25", ["OverCm"] = "10" }));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("value=\"17.25\"", await answer.Content.ReadAsStringAsync());
        Assert.Empty((await program.Get<TestersDoor>().OpenAsync(link.Token))!.Reports);
    }

    [Fact]
    public async Task Machines_are_asked_to_look_once_more()
    {
        MadeLink link = await program.LinkAsync("Dot");
        HttpResponseMessage answer = await PostAsync(program.Stranger(), link.Token, new() { ["Words"] = "buy", ["Homepage"] = "http://example.com" });
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty((await program.Get<TestersDoor>().OpenAsync(link.Token))!.Reports);
    }

    [Fact]
    public async Task Whoever_sends_without_end_has_to_wait()
    {
        MadeLink link = await program.LinkAsync("Fay");
        HttpClient stranger = program.Stranger();
        var codes = new List<HttpStatusCode>();
        for (int i = 0; i < 13; i++) codes.Add((await stranger.PostAsync($"/t/{link.Token}/report", new FormUrlEncodedContent([]))).StatusCode);
        Assert.Equal((HttpStatusCode.UnprocessableEntity, HttpStatusCode.TooManyRequests), (codes[0], codes[^1]));
        Assert.Equal(HttpStatusCode.OK, (await stranger.GetAsync($"/t/{link.Token}")).StatusCode);
    }

    /// <summary>As a browser does: opens the form, fills it in, sends it with what the form hides.</summary>
    private static async Task<HttpResponseMessage> PostAsync(HttpClient stranger, string token, Dictionary<string, string> fields)
    {
        string form = await stranger.GetStringAsync($"/t/{token}/report");
        foreach (Match hidden in Hidden().Matches(form)) fields.TryAdd(hidden.Groups[1].Value, WebUtility.HtmlDecode(hidden.Groups[2].Value));
        return await stranger.PostAsync($"/t/{token}/report", new FormUrlEncodedContent(fields));
    }

    [GeneratedRegex("<script src=\"([^\"]+)\"")]
    private static partial Regex Scripts();

    [GeneratedRegex("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"")]
    private static partial Regex Hidden();
}
