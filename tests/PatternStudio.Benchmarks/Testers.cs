using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using PatternStudio.Craft.Tests;
using PatternStudio.Studio;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Rounds;

namespace PatternStudio.Benchmarks;

/// <summary>
/// Two hundred testers open their links at once, and fifty send a report at once. Everything happens on this machine: the program is started on the loopback address, and those who
/// knock share its processors. Beside the times stands the time of the processors that the program itself took for a request: a busy machine doesn't change that much.
/// </summary>
internal static partial class Testers
{
    private const int Opening = 200;
    private const int Sending = 50;
    private const int Turns = 3;

    /// <summary>Testers who came before, in a round of their own: they are not measured.</summary>
    private const int Earlier = 40;

    private const int EarlierReports = 4;

    public static async Task<int> PrintAsync()
    {
        string folder = Directory.CreateTempSubdirectory("studio-").FullName;
        (string[] earlier, string[] tokens) = await SeedAsync(folder);
        using Process program = Start(folder);
        try
        {
            using var browser = new HttpClient(new SocketsHttpHandler { MaxConnectionsPerServer = Opening, UseCookies = false })
            {
                BaseAddress = await AddressAsync(program.StandardOutput), Timeout = TimeSpan.FromMinutes(5),
            };
            await WarmAsync(browser, earlier);
            return await MeasureAsync(browser, program, tokens);
        }
        finally
        {
            program.Kill(entireProcessTree: true);
            await program.WaitForExitAsync();
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>A program that has been running for a while: its code is compiled as it stays.</summary>
    private static async Task WarmAsync(HttpClient browser, string[] tokens)
    {
        for (int turn = 0; turn < EarlierReports; turn++)
        {
            await AtOnceAsync([.. tokens.Select(token => Open(browser, $"/t/{token}"))]);
            await AtOnceAsync([.. Enumerable.Repeat(Open(browser, Empty), tokens.Length)]);
            Func<Task<HttpResponseMessage>>[] posts = await ReadyAsync(browser, tokens, turn);
            await AtOnceAsync(posts);
        }

        Console.WriteLine($"Before: {Earlier} other testers have opened their links and sent {EarlierReports} reports each, as on a server that has been running for a while.");
        Console.WriteLine($"{Environment.ProcessorCount} processors, shared with those who knock; {Turns} turns, in which an empty page, the pattern and reports take their turns.");
    }

    private static async Task<int> MeasureAsync(HttpClient browser, Process program, string[] tokens)
    {
        var empty = new Series(program);
        var opened = new Series(program);
        var sent = new Series(program);
        var both = new Series(program);
        // In turn, so that a busy machine slows all alike.
        for (int turn = 0; turn < Turns; turn++)
        {
            await empty.AddAsync([.. Enumerable.Repeat(Open(browser, Empty), Opening)]);
            await opened.AddAsync([.. tokens.Select(token => Open(browser, $"/t/{token}"))]);
            await sent.AddAsync(await ReadyAsync(browser, [.. tokens.Take(Sending)], turn));
            Func<Task<HttpResponseMessage>>[] posts = await ReadyAsync(browser, [.. tokens.TakeLast(Sending)], turn);
            await both.AddAsync([.. posts, .. tokens.Select(token => Open(browser, $"/t/{token}"))]);
        }

        empty.Print($"{Opening} open an empty page of the same program at once", null);
        opened.Print($"{Opening} testers open the pattern at once", empty);
        sent.Print($"{Sending} testers send a report at once, up to the thanks", empty);
        both.Print($"{Opening} open and {Sending} send at once", empty);
        return opened.Errors + sent.Errors + both.Errors;
    }

    private const string Empty = "/not-found";

    private static Func<Task<HttpResponseMessage>> Open(HttpClient browser, string path) => () => browser.GetAsync(path);

    private static async Task<(double[] Milliseconds, int Errors)> AtOnceAsync(Func<Task<HttpResponseMessage>>[] requests)
    {
        int errors = 0;
        double[] taken = await Task.WhenAll(requests.Select(async request =>
        {
            long start = Stopwatch.GetTimestamp();
            using HttpResponseMessage answer = await request();
            await answer.Content.ReadAsByteArrayAsync();
            if ((int)answer.StatusCode >= 400) Interlocked.Increment(ref errors);
            return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }));
        return (taken, errors);
    }

    /// <summary>The forms, filled in and ready to be sent after as long as a person takes at least.</summary>
    private static async Task<Func<Task<HttpResponseMessage>>[]> ReadyAsync(HttpClient browser, string[] tokens, int turn)
    {
        Func<Task<HttpResponseMessage>>[] ready = await Task.WhenAll(tokens.Select((token, at) => ReadyAsync(browser, token, 15 + at % 40 / 10.0 + turn / 20.0)));
        await Task.Delay(TimeSpan.FromSeconds(2.5));
        return ready;
    }

    /// <param name="stitches">Every tester has a gauge of her own.</param>
    private static async Task<Func<Task<HttpResponseMessage>>> ReadyAsync(HttpClient browser, string token, double stitches)
    {
        using HttpResponseMessage page = await browser.GetAsync($"/t/{token}/report");
        string cookie = string.Join("; ", page.Headers.GetValues("Set-Cookie").Select(set => set.Split(';')[0]));
        var fields = Hidden().Matches(await page.Content.ReadAsStringAsync()).ToDictionary(match => match.Groups[1].Value, match => WebUtility.HtmlDecode(match.Groups[2].Value));
        (fields["Stitches"], fields["Rows"], fields["OverCm"], fields["YarnGrams"], fields["Remarks[0].Row"], fields["Remarks[0].Text"]) =
            (stitches.ToString(CultureInfo.InvariantCulture), "18", "10 cm", "22", "Row 2", "Does ch 1 count?");
        return () =>
        {
            var request = new HttpRequestMessage(HttpMethod.Post, $"/t/{token}/report") { Content = new FormUrlEncodedContent(fields) };
            request.Headers.Add("Cookie", cookie);
            return browser.SendAsync(request);
        };
    }

    private static async Task<(string[] Earlier, string[] Tokens)> SeedAsync(string folder)
    {
        IConfiguration configuration = new ConfigurationBuilder().AddInMemoryCollection([new("Store:Folder", folder)]).Build();
        var services = new ServiceCollection();
        services.AddLogging();
        services.AddDataProtection().UseEphemeralDataProtectionProvider();
        services.AddStudio(configuration, folder);
        await using ServiceProvider studio = services.BuildServiceProvider();
        await studio.MigrateStudioAsync();
        Caller designer = (await studio.GetRequiredService<StudioSetup>().CreateAsync("Dune & Drift", "mira@example.org", "a hook, a yarn, a chair", loadSample: false)).Value!;
        string text = await File.ReadAllTextAsync(Repository.Path("samples/diagonal-square-washcloth.txt"));
        Guid design = (await studio.GetRequiredService<DesignDesk>().CreateAsync(designer, "Kelp Bed Washcloth", text)).Value;
        return (await RoundAsync(studio, designer, design, Earlier), await RoundAsync(studio, designer, design, Opening));
    }

    /// <summary>The tokens of a round's testers.</summary>
    private static async Task<string[]> RoundAsync(ServiceProvider studio, Caller designer, Guid design, int testers)
    {
        DateOnly today = DateOnly.FromDateTime(DateTime.UtcNow);
        Guid round = (await studio.GetRequiredService<TestRounds>().BeginAsync(designer, design, new(1, today, today.AddDays(7), testers, [0], AskedFor.Everything, true, ""))).Value;
        var tokens = new List<string>();
        for (int i = 0; i < testers; i++) tokens.Add((await studio.GetRequiredService<ShareLinks>().MakeForAsync(designer, round, $"Tester {i}", null)).Value!.Token);
        return [.. tokens];
    }

    private static Process Start(string folder)
    {
        var build = new DirectoryInfo(AppContext.BaseDirectory);
        string file = Path.Combine(Repository.Path("src/PatternStudio.Web"), "bin", build.Parent!.Name, build.Name, "PatternStudio.Web.dll");
        if (!File.Exists(file)) throw new FileNotFoundException("Build PatternStudio.Web in this configuration first.", file);
        var start = new ProcessStartInfo("dotnet", [file, "--urls", "http://127.0.0.1:0"]) { RedirectStandardOutput = true, WorkingDirectory = Repository.Path("src/PatternStudio.Web") };
        start.Environment["Store__Folder"] = folder;
        return Process.Start(start)!;
    }

    private static async Task<Uri> AddressAsync(StreamReader console)
    {
        while (await console.ReadLineAsync() is { } line)
            if (line.Split(' ').FirstOrDefault(word => word.StartsWith("http://", StringComparison.Ordinal)) is { } address)
            {
                _ = console.ReadToEndAsync(); // so that the program never waits for a reader
                return new Uri(address);
            }

        throw new InvalidOperationException("The program ended without printing its address.");
    }

    [GeneratedRegex("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"")]
    private static partial Regex Hidden();

    /// <summary>Requests of one kind, over all turns.</summary>
    private sealed class Series(Process program)
    {
        private readonly List<double> milliseconds = [];
        private TimeSpan processor;

        public int Errors { get; private set; }

        private double Median => milliseconds.Order().ElementAt(milliseconds.Count / 2);

        public async Task AddAsync(Func<Task<HttpResponseMessage>>[] requests)
        {
            program.Refresh();
            TimeSpan before = program.TotalProcessorTime;
            (double[] taken, int errors) = await AtOnceAsync(requests);
            program.Refresh();
            processor += program.TotalProcessorTime - before;
            milliseconds.AddRange(taken);
            Errors += errors;
        }

        public void Print(string what, Series? empty)
        {
            Console.WriteLine(
                $"{what,-56} median {Median:F0} ms, 95 % {milliseconds.Order().ElementAt(milliseconds.Count * 95 / 100):F0} ms, slowest {milliseconds.Max():F0} ms, "
                + $"processor {processor.TotalMilliseconds / milliseconds.Count:F2} ms each{(empty is null ? "" : $", errors {Errors}")}");
            if (empty is not null) Console.WriteLine($"{"",-56} to the empty page: {Median / empty.Median:F2} of the medians, {processor / milliseconds.Count / (empty.processor / empty.milliseconds.Count):F2} of the processors' time");
        }
    }
}
