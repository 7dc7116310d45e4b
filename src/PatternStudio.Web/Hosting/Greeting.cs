namespace PatternStudio.Web.Hosting;

/// <summary>What the console says once the studio is open.</summary>
internal static class Greeting
{
    public static void Print(WebApplication app)
    {
        foreach (string address in app.Urls)
            Console.WriteLine($"Pattern Studio is open at {address} - press Ctrl+C here to close it.");
    }
}
