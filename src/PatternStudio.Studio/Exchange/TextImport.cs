using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using PatternStudio.Craft.Reading.Pasting;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Exchange;

/// <summary>A text as it would be taken in.</summary>
/// <param name="File">The file it comes from.</param>
/// <param name="Title">The title it would get; empty where refused.</param>
/// <param name="Refusal">Why it is not taken; empty where it is.</param>
/// <param name="Note">What is to be known about it: renamed, tidied; may be empty.</param>
public sealed record IncomingText(string File, string Title, string Text, string Refusal, string Note)
{
    /// <summary>True where it can be taken.</summary>
    public bool IsTaken => Refusal.Length == 0;
}

/// <summary>What became of a file.</summary>
/// <param name="DesignId">The design made of it; null where refused, or where it was stopped before.</param>
public sealed record ImportLine(IncomingText Text, Guid? DesignId);

/// <summary>Takes in many written patterns at once: first they are looked through, then taken one by one, each whole or not at all.</summary>
public sealed class TextImport(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock, ILogger<TextImport> log)
{
    /// <summary>Most files at once.</summary>
    public const int MostFiles = 5_000;

    /// <summary>Looks through files; zips among them are opened. Nothing is stored.</summary>
    public async Task<IReadOnlyList<IncomingText>> LookAsync(Caller caller, IReadOnlyList<IncomingFile> files, CancellationToken cancel = default)
    {
        var titles = new TitleBook(await TitlesAsync(caller, cancel));
        var found = new List<IncomingText>();
        foreach (IncomingFile file in files.SelectMany(Opened))
        {
            cancel.ThrowIfCancellationRequested();
            found.Add(found.Count < MostFiles ? Look(file, titles) : Refuse(file, $"More than {MostFiles:N0} files came at once. Bring this one in with the next lot."));
        }

        return found;
    }

    /// <summary>Takes texts in. What was taken before it is stopped stays and is in the report.</summary>
    /// <param name="progress">Told how many texts are done.</param>
    public async Task<IReadOnlyList<ImportLine>> TakeAsync(
        Caller caller, IReadOnlyList<IncomingText> texts, IProgress<int>? progress = null, CancellationToken cancel = default)
    {
        var report = new List<ImportLine>();
        foreach (IncomingText text in texts)
        {
            if (cancel.IsCancellationRequested || !text.IsTaken) report.Add(new ImportLine(text, null));
            else report.Add(await TakeOrTellAsync(caller, text));
            progress?.Report(report.Count);
        }

        return report;
    }

    /// <summary>Where the store fails at one text, those before it must stay in the report: it is the only way to take them back.</summary>
    private async Task<ImportLine> TakeOrTellAsync(Caller caller, IncomingText text)
    {
        try
        {
            return await TakeAsync(caller, text);
        }
        catch (Exception fault) when (fault is DbException or DbUpdateException)
        {
            log.LogWarning(fault, "A text could not be taken in");
            return new ImportLine(text with { Refusal = "The studio could not keep it just now. Bring this file in once more." }, null);
        }
    }

    /// <summary>Once begun a text is finished: it is not stopped midway.</summary>
    private async Task<ImportLine> TakeAsync(Caller caller, IncomingText text)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync();
        if (!await context.IsMemberAsync(caller, default)) return new ImportLine(text with { Refusal = Refusals.NoMember.Message }, null);
        Design design = await context.BeginAsync(caller, text.Title, text.Text, clock.Now(), default);
        await context.SaveChangesAsync();
        return new ImportLine(text, design.Id);
    }

    private async Task<List<(string Title, string Text)>> TitlesAsync(Caller caller, CancellationToken cancel)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        var designs = await context.DesignsOf(caller).Select(design => new { design.Title, design.Text }).ToListAsync(cancel);
        return [.. designs.Select(design => (design.Title, design.Text))];
    }

    private static IEnumerable<IncomingFile> Opened(IncomingFile file)
    {
        if (!file.Name.EndsWith(".zip", StringComparison.OrdinalIgnoreCase)) return [file];
        Outcome<PackedFiles> zip = PackedFiles.Open(new MemoryStream(file.Content));
        if (!zip.Succeeded) return [new IncomingFile(file.Name, []) { Refusal = zip.ToString() }];
        using PackedFiles packed = zip.Value!;
        return [.. packed.Names.Where(IsMeant).Take(MostFiles + 1).Select(name => Unpacked(packed, name))];
    }

    private static IncomingFile Unpacked(PackedFiles packed, string name)
    {
        Outcome<byte[]> content = packed.Read(name, FileText.MostBytes);
        return new IncomingFile(name, content.Value ?? []) { Refusal = content.Succeeded ? "" : content.ToString() };
    }

    /// <summary>Files that systems put beside others by themselves.</summary>
    private static bool IsMeant(string name) =>
        !name.StartsWith("__MACOSX/", StringComparison.Ordinal) && Path.GetFileName(name) is not (".DS_Store" or "Thumbs.db" or "desktop.ini");

    private static IncomingText Look(IncomingFile file, TitleBook titles)
    {
        if (file.Refusal.Length > 0) return Refuse(file, file.Refusal);
        if (file.Name.EndsWith(".zip", StringComparison.OrdinalIgnoreCase)) return Refuse(file, "It is a zip within a zip. Open it and bring in its files.");
        Outcome<string> decoded = FileText.Decode(file.Content);
        if (!decoded.Succeeded) return Refuse(file, decoded.ToString());
        TidiedText tidied = PastedText.Tidy(decoded.Value!);
        if (Refusals.OfText(tidied.Text) is [{ } fault, ..]) return Refuse(file, fault.Message);
        if (titles.WithWords(tidied.Text) is { } twin) return Refuse(file, $"The same words are in your studio already, as '{twin}'.");
        string wanted = TitleOf(file.Name, tidied.Text);
        string title = titles.Enter(wanted, tidied.Text);
        string[] notes =
        [
            .. title == wanted ? Array.Empty<string>() : [$"There is a '{wanted}' already."],
            .. tidied.Repairs.Any(repair => repair.Kind != RepairKind.EmptyLines) ? ["Tidied: marks of mails, pages or printing were dropped."] : Array.Empty<string>(),
        ];
        return new IncomingText(file.Name, title, tidied.Text, "", string.Join(' ', notes));
    }

    private static IncomingText Refuse(IncomingFile file, string why) => new(file.Name, "", "", why, "");

    /// <summary>A pattern mostly begins with its name; where it begins with work, the file's name is taken.</summary>
    internal static string TitleOf(string file, string text)
    {
        string first = text.Split('\n').Select(line => line.Trim(' ', '#', '*', '_', '=')).FirstOrDefault(line => line.Length > 0) ?? "";
        bool named = first.Length is > 2 and <= 80 && first.Any(char.IsLetter) && !first.Contains(':', StringComparison.Ordinal) && first[^1] is not ('.' or ')' or ']' or ',');
        string title = named ? first : Path.GetFileNameWithoutExtension(file).Replace('_', ' ').Replace('-', ' ').Trim();
        if (title.Length == 0) title = "Without a name";
        return Design.TitleOf(title);
    }
}
