namespace PatternStudio.Cli.Tests;

/// <summary>A folder for one test, gone after it.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("patterns").FullName;

    /// <summary>Writes a file and gives its path.</summary>
    public string File(string name, byte[] content)
    {
        string path = System.IO.Path.Combine(Path, name);
        System.IO.File.WriteAllBytes(path, content);
        return path;
    }

    public string File(string name, string content) => File(name, System.Text.Encoding.UTF8.GetBytes(content));

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
