using Microsoft.JSInterop;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Numbers to take along.</summary>
public sealed partial class DeskPage
{
    /// <summary>Of the size shown; null until something was computed on this desk.</summary>
    private Measured<RowSchedule>? Schedule => answer?.Schedules.ElementAtOrDefault(Math.Min(size, Results.Sizes.Count - 1));

    /// <summary>The schedule of the size shown, of the words as they are now, saved or not.</summary>
    private async Task DownloadAsync()
    {
        if (answer is null) await ComputeAsync();
        if (Schedule is not { IsKnown: true } schedule || room is null) return;
        await room.InvokeVoidAsync("download", $"{design!.Title}{(Size.Name.Length > 0 ? $" {Size.Name}" : "")}.csv", ScheduleCsv.Write(schedule.Value));
    }
}
