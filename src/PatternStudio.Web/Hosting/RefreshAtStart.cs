using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Hosting;

/// <summary>After the program was renewed, what lists show is computed anew beside the open pages.</summary>
internal sealed class RefreshAtStart(DesignRefresh refresh, ILogger<RefreshAtStart> log) : BackgroundService
{
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await Task.Yield();
        try
        {
            int renewed = await refresh.RunAsync(stoppingToken);
            if (renewed > 0) log.LogInformation("The results of {Designs} designs were computed anew.", renewed);
        }
        catch (OperationCanceledException)
        {
            // The program is being closed; the rest is done at its next start.
        }
        catch (Exception exception)
        {
            log.LogError(exception, "The results of designs could not be computed anew; each is when it is opened.");
        }
    }
}
