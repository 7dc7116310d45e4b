using System.Diagnostics;
using System.Net;
using System.Text.RegularExpressions;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using PatternStudio.EndToEnd;
using PatternStudio.Studio;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Benchmarks;

/// <summary>The list of designs with 2 000 of them: first byte of its page beside an almost empty page of the same program, and what the list itself costs.</summary>
internal static partial class Shelf
{
    private const int Designs = 2_000, Times = 41;
    private const string Email = "mira@example.org", Password = "a hook, a yarn, a chair";

    public static int Print() => PrintAsync().GetAwaiter().GetResult();

    private static async Task<int> PrintAsync()
    {
        await using StudioProgram program = await StudioProgram.StartAsync();
        using var handler = new HttpClientHandler { CookieContainer = new CookieContainer() };
        using var browser = new HttpClient(handler) { BaseAddress = program.Address };
        await SetUpAsync(browser);
        await using ServiceProvider services = Open(program.Store);
        Caller caller = await CallerAsync(services);
        DesignLibrary library = services.GetRequiredService<DesignLibrary>();
        double few = await MedianAsync(() => library.ListAsync(caller, new DesignQuery(PageSize: 48)));
        ManyDesigns.Fill(program.Store, Designs - 7);
        (double empty, double page) = await FirstBytesAsync(browser);
        Say("first byte of the page of designs, beside the page to sign out", $"{page / empty:F2} times ({empty:F2} → {page:F2} ms)", "at most 3");
        await AskAsync("first page", new DesignQuery(PageSize: 48));
        await AskAsync("last page", new DesignQuery(PageSize: 48, Page: Designs / 48));
        await AskAsync("by title", new DesignQuery(Order: DesignOrder.Title, Descending: false, PageSize: 48));
        await AskAsync("most errors first, with findings", new DesignQuery(Order: DesignOrder.Errors, PageSize: 48) { WithFindings = true });
        await AskAsync("words of the text", new DesignQuery("granny \"in same\"", PageSize: 48));
        return 0;

        async Task AskAsync(string what, DesignQuery query)
        {
            double many = await MedianAsync(() => library.ListAsync(caller, query));
            Say($"list of {Designs}: {what}, beside the list of 7", $"{many / few:F2} times ({few:F2} → {many:F2} ms)", "");
        }
    }

    /// <summary>In turn, so that a busy machine slows both alike.</summary>
    private static async Task<(double Empty, double Page)> FirstBytesAsync(HttpClient browser)
    {
        double[] empty = new double[Times], page = new double[Times];
        for (int i = -5; i < Times; i++)
        {
            double one = await FirstByteAsync(browser, "sign-out"), other = await FirstByteAsync(browser, "designs");
            if (i >= 0) (empty[i], page[i]) = (one, other);
        }

        return (Median(empty), Median(page));
    }

    private static async Task<double> FirstByteAsync(HttpClient browser, string address)
    {
        var clock = Stopwatch.StartNew();
        using HttpResponseMessage answer = await browser.GetAsync(new Uri(address, UriKind.Relative), HttpCompletionOption.ResponseHeadersRead);
        await using Stream body = await answer.Content.ReadAsStreamAsync();
        if (body.ReadByte() < 0 || !answer.IsSuccessStatusCode) throw new InvalidOperationException($"'{address}' did not answer.");
        double taken = clock.Elapsed.TotalMilliseconds;
        await body.CopyToAsync(Stream.Null);
        return taken;
    }

    private static async Task SetUpAsync(HttpClient browser)
    {
        string form = await browser.GetStringAsync(new Uri("set-up", UriKind.Relative));
        var fields = Hidden().Matches(form).ToDictionary(field => field.Groups[1].Value, field => WebUtility.HtmlDecode(field.Groups[2].Value));
        foreach (string name in Named().Matches(form).Select(field => field.Groups[1].Value).Where(name => !fields.ContainsKey(name)))
            fields[name] = name.Contains("mail", StringComparison.OrdinalIgnoreCase) ? Email
                : name.Contains("assword", StringComparison.Ordinal) ? Password
                : name.Contains("ample", StringComparison.Ordinal) ? "true" : "Alder & Skein";
        using HttpResponseMessage answer = await browser.PostAsync(new Uri("set-up", UriKind.Relative), new FormUrlEncodedContent(fields));
        answer.EnsureSuccessStatusCode();
    }

    private static ServiceProvider Open(string folder)
    {
        IConfiguration configuration = new ConfigurationBuilder().AddInMemoryCollection([new("Store:Folder", folder)]).Build();
        return new ServiceCollection().AddLogging().AddStudio(configuration).BuildServiceProvider();
    }

    private static async Task<Caller> CallerAsync(ServiceProvider services)
    {
        await using AsyncServiceScope scope = services.CreateAsyncScope();
        var accounts = scope.ServiceProvider.GetRequiredService<Microsoft.AspNetCore.Identity.UserManager<Account>>();
        Account account = await accounts.FindByEmailAsync(Email) ?? throw new InvalidOperationException("The studio was not set up.");
        return await services.GetRequiredService<Memberships>().CallerAsync(account.Id) ?? throw new InvalidOperationException("The account has no studio.");
    }

    private static async Task<double> MedianAsync(Func<Task> work)
    {
        double[] taken = new double[Times];
        for (int i = -5; i < Times; i++)
        {
            var clock = Stopwatch.StartNew();
            await work();
            if (i >= 0) taken[i] = clock.Elapsed.TotalMilliseconds;
        }

        return Median(taken);
    }

    private static double Median(double[] taken) => taken.Order().ElementAt(taken.Length / 2);

    private static void Say(string name, string value, string aim) => Console.WriteLine($"{name,-75} {value,-40} {aim}");

    [GeneratedRegex("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"")]
    private static partial Regex Hidden();

    [GeneratedRegex("<input[^>]* name=\"([^\"]+)\"")]
    private static partial Regex Named();
}
