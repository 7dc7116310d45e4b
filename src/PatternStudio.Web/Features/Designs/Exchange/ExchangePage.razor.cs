using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Exchange;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Designs.Exchange;

/// <summary>Brings patterns, yarns and archives in, and takes everything out.</summary>
public sealed partial class ExchangePage : IDisposable
{
    /// <summary>Largest zip sent through the page.</summary>
    private const long MostBytes = 512L * 1024 * 1024;

    private IReadOnlyList<IncomingText>? texts;
    private IReadOnlyList<ImportLine>? report;
    private YarnTable? yarns;
    private CancellationTokenSource stop = new();
    private IReadOnlyList<Guid> taken = [];
    private bool undone;
    private string? said;
    private string tone = "note";
    private bool busy;
    private int done;
    private int of;

    [Inject]
    private TextImport Texts { get; set; } = null!;

    [Inject]
    private DesignBatch Batch { get; set; } = null!;

    [Inject]
    private YarnImport Yarns { get; set; } = null!;

    [Inject]
    private ArchiveImport Archives { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    public void Dispose()
    {
        stop.Cancel();
        stop.Dispose();
    }

    private void Stop() => stop.Cancel();

    private void PutAway() => (texts, report, yarns, said) = (null, null, null, null);

    /// <summary>Files are read one after another; an archive of a studio is taken at once, texts are shown first.</summary>
    private Task LookAsync(InputFileChangeEventArgs chosen) => WorkAsync(async cancel =>
    {
        if (chosen.FileCount > TextImport.MostFiles)
        {
            Say(Words["TooManyFiles", TextImport.MostFiles], "error");
            return;
        }

        IReadOnlyList<IBrowserFile> files = chosen.FileCount == 0 ? [] : chosen.GetMultipleFiles(TextImport.MostFiles);
        of = files.Count;
        if (files is [{ } only] && only.Name.EndsWith(".zip", StringComparison.OrdinalIgnoreCase) && await TakeArchiveAsync(only, cancel)) return;
        var read = new List<IncomingFile>();
        foreach (IBrowserFile file in files)
        {
            read.Add(await ReadAsync(file, cancel));
            await TellAsync(read.Count, files.Count);
        }

        Caller caller = await SignedIn.CallerAsync();
        texts = await Task.Run(() => Texts.LookAsync(caller, read, cancel), cancel);
    });

    private Task TakeAsync() => WorkAsync(async cancel =>
    {
        Caller caller = await SignedIn.CallerAsync();
        int all = texts!.Count;
        report = await Task.Run(() => Texts.TakeAsync(caller, texts!, new Progress<int>(count => _ = TellAsync(count, all)), cancel), CancellationToken.None);
        taken = [.. report.Select(line => line.DesignId).OfType<Guid>()];
        Say(Words[cancel.IsCancellationRequested ? "TextsStopped" : "TextsTaken", taken.Count, all]);
    });

    /// <summary>False where the zip is no archive of a studio.</summary>
    private async Task<bool> TakeArchiveAsync(IBrowserFile file, CancellationToken cancel)
    {
        // Kept in a file while it is read: an archive may be larger than a memory should be.
        await using var kept = new FileStream(Path.GetTempFileName(), FileMode.Create, FileAccess.ReadWrite, FileShare.None, 1 << 16, FileOptions.DeleteOnClose | FileOptions.Asynchronous);
        await using (Stream sent = file.OpenReadStream(MostBytes, cancel)) await sent.CopyToAsync(kept, cancel);
        kept.Position = 0;
        if (!ArchiveImport.IsArchive(kept)) return false;
        kept.Position = 0;
        Caller caller = await SignedIn.CallerAsync();
        Outcome<ArchiveTaken> outcome = await Task.Run(
            () => Archives.TakeAsync(caller, kept, new Progress<(int Done, int Of)>(at => _ = TellAsync(at.Done, at.Of)), cancel), CancellationToken.None);
        if (outcome.Value is { } brought)
        {
            taken = brought.Designs;
            Say(Words["ArchiveTaken", brought.Designs.Count, brought.Yarns, brought.Known.Count]);
        }
        else Say(outcome.ToString(), "error");
        return true;
    }

    /// <summary>What was brought in by mistake goes to the deleted designs, all at once; what was there before stays.</summary>
    private Task TakeOffAsync()
    {
        IReadOnlyList<Guid> mistaken = taken;
        return WorkAsync(async cancel =>
        {
            IReadOnlyList<Guid> gone = await Batch.DeleteAsync(await SignedIn.CallerAsync(), mistaken, cancel);
            undone = true;
            Say(Words[gone.Count == 1 ? "TakenOffOne" : "TakenOff", gone.Count]);
        });
    }

    private Task LookAtYarnsAsync(InputFileChangeEventArgs chosen) => WorkAsync(async cancel =>
    {
        IncomingFile file = await ReadAsync(chosen.File, cancel);
        Outcome<string> text = file.Refusal.Length > 0 ? Outcome.Refused("", file.Refusal) : FileText.Decode(file.Content);
        Outcome<YarnTable> table = text.Succeeded ? YarnTable.Read(text.Value!) : Outcome.Refused(text.Messages);
        if (table.Value is { } read && table.Succeeded) yarns = read;
        else Say(table.ToString(), "error");
    });

    private Task TakeYarnsAsync() => WorkAsync(async cancel =>
    {
        Outcome<YarnsTaken> taken = await Yarns.TakeAsync(await SignedIn.CallerAsync(), yarns!, cancel);
        yarns = null;
        if (taken.Value is { } made) Say(Words["YarnsTaken", made.Added, made.Lots, made.Known]);
        else Say(taken.ToString(), "error");
    });

    private async Task<IncomingFile> ReadAsync(IBrowserFile file, CancellationToken cancel)
    {
        bool zip = file.Name.EndsWith(".zip", StringComparison.OrdinalIgnoreCase);
        long most = zip ? MostBytes : FileText.MostBytes;
        if (file.Size > most) return new IncomingFile(file.Name, []) { Refusal = Words["FileTooLarge", most / 1024 / 1024] };
        using var bytes = new MemoryStream();
        await using (Stream sent = file.OpenReadStream(most, cancel)) await sent.CopyToAsync(bytes, cancel);
        return new IncomingFile(file.Name, bytes.ToArray());
    }

    private async Task WorkAsync(Func<CancellationToken, Task> work)
    {
        stop.Dispose();
        stop = new CancellationTokenSource();
        (busy, said, done, of) = (true, null, 0, 0);
        (taken, undone) = ([], false);
        if (report is not null) (texts, report) = (null, null);
        try
        {
            await work(stop.Token);
        }
        catch (OperationCanceledException)
        {
            Say(Words["StoppedAll"]);
        }
        catch (IOException)
        {
            Say(Words["Interrupted"], "error");
        }
        finally
        {
            busy = false;
        }
    }

    private void Say(string words, string how = "note") => (said, tone) = (words, how);

    private Task TellAsync(int at, int all) => InvokeAsync(() =>
    {
        (done, of) = (at, all);
        StateHasChanged();
    });
}
