using System.Diagnostics;

namespace PatternStudio.Cli.Tests;

public sealed class ProcessTests
{
    [Fact]
    public async Task The_program_itself_answers_with_its_exit_code_and_streams()
    {
        string program = Path.Combine(AppContext.BaseDirectory, "PatternStudio.Cli.dll");
        var start = new ProcessStartInfo("dotnet", [program, "check", "nowhere.txt"]) { RedirectStandardOutput = true, RedirectStandardError = true };
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        string error = await process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.Equal((ExitCode.Unusable, "", "There is no file 'nowhere.txt'."), (process.ExitCode, await output, error.TrimEnd()));
    }
}
