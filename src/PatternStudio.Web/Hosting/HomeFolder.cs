namespace PatternStudio.Web.Hosting;

/// <summary>Where the program finds its own files, from whatever folder it is started.</summary>
internal static class HomeFolder
{
    /// <summary>A published program has them beside itself; one run from its sources has them where its project is, which is where it is started.</summary>
    public static WebApplicationOptions Options(string[] args) => new()
    {
        Args = args,
        ContentRootPath = Directory.Exists(Path.Combine(AppContext.BaseDirectory, "wwwroot")) ? AppContext.BaseDirectory : null,
    };
}
