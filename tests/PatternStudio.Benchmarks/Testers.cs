using System.Diagnostics;
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

/// <summary>Two hundred testers open their links at once, and fifty send a report at once. Everything happens on this machine: the program is started on the loopback address.</summary>
internal static partial class Testers
{
    private const int Opening = 200;
    private const int Sending = 50;

    public static async Task<int> PrintAsync()
    {
        string folder = Directory.CreateTempSubdirectory("studio-").FullName;
        string[] tokens = await SeedAsync(folder);
        using Process program = Start(folder);
        try
        {
            Uri address = await AddressAsync(program.StandardOutput);
            return await MeasureAsync(address, tokens);
        }
        finally
        {
            program.Kill(entireProcessTree: true);
            await program.WaitForExitAsync();
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task<int> MeasureAsync(Uri address, string[] tokens)
    {
        using var browser = new HttpClient(new SocketsHttpHandler { MaxConnectionsPerServer = Opening, UseCookies = false }) { BaseAddress = address, Timeout = TimeSpan.FromMinutes(5) };
        Func<string, Func<Task<HttpResponseMessage>>> open = path => () => browser.GetAsync(path);
        string[] sheets = [.. tokens.Select(token => $"/t/{token}")];
        await AtOnceAsync([.. sheets.Take(20).Select(open)]);
        await AtOnceAsync([.. Enumerable.Repeat("/not-found", 20).Select(open)]);
        // In turn, so that a busy machine slows both alike.
        double[] empty = [], full = [];
        int errors = 0;
        for (int turn = 0; turn < 3; turn++)
        {
            (double[] e, _) = await AtOnceAsync([.. Enumerable.Repeat("/not-found", Opening).Select(open)]);
            (double[] f, int wrong) = await AtOnceAsync([.. sheets.Select(open)]);
            (empty, full, errors) = ([.. empty, .. e], [.. full, .. f], errors + wrong);
        }

        Print($"{Opening} testers open the pattern at once", full, errors);
        Print($"{Opening} open an empty page of the same program at once", empty, 0);
        Console.WriteLine($"ratio of the medians: {Median(full) / Median(empty):F2}");

        Func<Task<HttpResponseMessage>>[] posts = await Task.WhenAll(tokens.Take(Sending).Select(token => ReadyAsync(browser, token)));
        await Task.Delay(TimeSpan.FromSeconds(2.5)); // as long as a person takes at least
        (double[] sent, int refused) = await AtOnceAsync(posts);
        Print($"{Sending} testers send a report at once", sent, refused);
        return errors + refused;
    }

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

    /// <summary>The form, filled in and ready to be sent.</summary>
    private static async Task<Func<Task<HttpResponseMessage>>> ReadyAsync(HttpClient browser, string token)
    {
        using HttpResponseMessage page = await browser.GetAsync($"/t/{token}/report");
        string cookie = string.Join("; ", page.Headers.GetValues("Set-Cookie").Select(set => set.Split(';')[0]));
        var fields = Hidden().Matches(await page.Content.ReadAsStringAsync()).ToDictionary(match => match.Groups[1].Value, match => WebUtility.HtmlDecode(match.Groups[2].Value));
        (fields["Stitches"], fields["Rows"], fields["OverCm"], fields["YarnGrams"], fields["Remarks[0].Row"], fields["Remarks[0].Text"]) = ("17", "18", "10 cm", "22", "Row 2", "Does ch 1 count?");
        return () =>
        {
            var request = new HttpRequestMessage(HttpMethod.Post, $"/t/{token}/report") { Content = new FormUrlEncodedContent(fields) };
            request.Headers.Add("Cookie", cookie);
            return browser.SendAsync(request);
        };
    }

    private static async Task<string[]> SeedAsync(string folder)
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
        DateOnly today = DateOnly.FromDateTime(DateTime.UtcNow);
        Guid round = (await studio.GetRequiredService<TestRounds>().BeginAsync(designer, design, new(1, today, today.AddDays(7), Opening, [0], AskedFor.Everything, true, ""))).Value;
        var tokens = new List<string>();
        for (int i = 0; i < Opening; i++) tokens.Add((await studio.GetRequiredService<ShareLinks>().MakeForAsync(designer, round, $"Tester {i}", null)).Value!.Token);
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

    private static void Print(string what, double[] milliseconds, int errors) => Console.WriteLine(
        $"{what,-60} median {Median(milliseconds):F0} ms, 95 % {milliseconds.Order().ElementAt(milliseconds.Length * 95 / 100):F0} ms, slowest {milliseconds.Max():F0} ms, errors {errors}");

    private static double Median(double[] values) => values.Order().ElementAt(values.Length / 2);

    [GeneratedRegex("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"")]
    private static partial Regex Hidden();
}
