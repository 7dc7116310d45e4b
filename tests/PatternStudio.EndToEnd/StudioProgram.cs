using System.Diagnostics;

namespace PatternStudio.EndToEnd;

/// <summary>The program as a designer starts it: a process of its own, an empty data folder, an address printed on the console.</summary>
public sealed class StudioProgram : IAsyncDisposable
{
    private readonly Process process;
    private readonly DirectoryInfo folder;

    private StudioProgram(Process process, DirectoryInfo folder, Uri address) =>
        (this.process, this.folder, Address) = (process, folder, address);

    public Uri Address { get; }

    /// <summary>Where it keeps its data.</summary>
    public string Store => Path.Combine(folder.FullName, "data");

    /// <param name="furnish">Fills the folder of the data before the program starts; null leaves it empty.</param>
    public static async Task<StudioProgram> StartAsync(Action<string>? furnish = null)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("studio-");
        furnish?.Invoke(Path.Combine(folder.FullName, "data"));
        var start = new ProcessStartInfo("dotnet", [ProgramFile(), "--urls", "http://127.0.0.1:0"])
        {
            RedirectStandardOutput = true,
            WorkingDirectory = folder.FullName,
        };
        start.Environment["Store__Folder"] = Path.Combine(folder.FullName, "data");
        Process process = Process.Start(start)!;
        return new StudioProgram(process, folder, await AddressAsync(process.StandardOutput).WaitAsync(TimeSpan.FromMinutes(1)));
    }

    /// <summary>Ends the program; its data stay.</summary>
    public Task StopAsync()
    {
        process.Kill(entireProcessTree: true);
        return process.WaitForExitAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await StopAsync();
        process.Dispose();
        folder.Delete(recursive: true);
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

    /// <summary>The built program beside the tests' own build: same configuration, same framework.</summary>
    private static string ProgramFile()
    {
        var build = new DirectoryInfo(AppContext.BaseDirectory);
        string file = Path.Combine(
            Repository.Root, "src", "PatternStudio.Web", "bin", build.Parent!.Name, build.Name, "PatternStudio.Web.dll");
        return File.Exists(file) ? file : throw new FileNotFoundException("Build PatternStudio.Web first.", file);
    }
}
