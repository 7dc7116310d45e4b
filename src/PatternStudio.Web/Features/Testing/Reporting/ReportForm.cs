using System.Globalization;
using Microsoft.AspNetCore.DataProtection;
using PatternStudio.Studio;
using PatternStudio.Studio.Rounds;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Testing.Reporting;

/// <summary>What came of reading a posted form.</summary>
/// <param name="Input">As typed.</param>
/// <param name="Messages">What is wrong with it, field by field; empty where it can be sent on.</param>
public sealed record PostedReport(ReportInput Input, ReportDetails Details, IReadOnlyList<FieldMessage> Messages);

/// <summary>Reads the report form and tells people from machines without a riddle: a field that people don't see, and the time that writing takes.</summary>
internal sealed class ReportForm(IDataProtectionProvider protection, TimeProvider clock)
{
    /// <summary>A field that no person sees; whoever fills it in fills in everything.</summary>
    public const string Lure = "Homepage";

    /// <summary>When the form was opened, sealed.</summary>
    public const string Opened = "Opened";

    /// <summary>Nobody reads and fills in the form in less.</summary>
    private static readonly TimeSpan Shortest = TimeSpan.FromSeconds(2);

    private readonly IDataProtector seal = protection.CreateProtector("PatternStudio.TesterForm.Opened");

    public string SealNow() => seal.Protect(clock.GetUtcNow().ToUnixTimeMilliseconds().ToString(CultureInfo.InvariantCulture));

    /// <summary>Reads everything; what is wrong is told, nothing is dropped.</summary>
    public async Task<PostedReport> ReadAsync(IFormCollection form, bool photosAsked, CancellationToken cancel)
    {
        var wrong = new TypedForm();
        var remarks = new List<RemarkInput>();
        for (int at = 0; at < ReportInput.RemarkPlaces; at++)
            remarks.Add(new RemarkInput(form[$"Remarks[{at}].Row"].ToString(), form[$"Remarks[{at}].Word"].ToString(), form[$"Remarks[{at}].Text"].ToString())
            {
                Photo = photosAsked ? await PhotoAsync(form, $"Remarks[{at}].Photo", wrong, cancel) : null,
            });
        var input = new ReportInput(ReportInput.Names.ToDictionary(name => name, name => form[name].ToString()), remarks)
        {
            AddsTo = Guid.TryParse(form["AddsTo"], out Guid report) ? report : null,
            Version = int.TryParse(form["Version"], NumberStyles.None, CultureInfo.InvariantCulture, out int version) ? version : null,
            Photo = photosAsked ? await PhotoAsync(form, "Photo", wrong, cancel) : null,
        };
        ReportDetails details = input.Read(wrong);
        if (form[Lure].ToString().Length > 0 || !TookItsTime(form[Opened].ToString()))
            wrong.Refuse("", "That was quicker than people write. Look over your report once more, then send it again.");
        return new PostedReport(input, details, wrong.Wrong);
    }

    private static async Task<KeptUpload?> PhotoAsync(IFormCollection form, string name, TypedForm wrong, CancellationToken cancel)
    {
        Outcome<KeptUpload?> read = await KeptUpload.ReadAsync(form, name, cancel);
        foreach (FieldMessage message in read.Messages) wrong.Refuse(name, message.Message);
        return read.Value;
    }

    private bool TookItsTime(string opened)
    {
        try
        {
            return clock.GetUtcNow() - DateTimeOffset.FromUnixTimeMilliseconds(long.Parse(seal.Unprotect(opened), CultureInfo.InvariantCulture)) >= Shortest;
        }
        catch (System.Security.Cryptography.CryptographicException)
        {
            return false;
        }
    }
}
