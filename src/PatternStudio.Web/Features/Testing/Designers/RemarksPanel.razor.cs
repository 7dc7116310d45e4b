using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Rounds;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Testing.Designers;

/// <summary>What testers said, gathered at the rows: where several stumble, the row is at fault.</summary>
public sealed partial class RemarksPanel
{
    private IReadOnlyList<FieldMessage> wrong = [];
    private string? answering;
    private AnswerKind kind = AnswerKind.Mended;
    private int mendedIn;
    private string words = "";

    [Parameter, EditorRequired]
    public RoundBook Book { get; set; } = null!;

    [Parameter, EditorRequired]
    public OpenDesign Design { get; set; } = null!;

    /// <summary>The newest first.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<VersionSummary> Versions { get; set; } = [];

    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private RemarkAnswers Answers { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    /// <summary>Rows that most testers speak of first.</summary>
    private IEnumerable<IGrouping<string, KeptRemark>> ByRow =>
        Book.Remarks.GroupBy(remark => remark.Details.Row).OrderByDescending(row => row.Select(remark => remark.TesterName).Distinct().Count());

    private string RowAddress(string row) => $"designs/{Design.Id}?row={Uri.EscapeDataString(row)}";

    private void Begin(string row) => (answering, kind, mendedIn, words, wrong) = (row, AnswerKind.Mended, Design.Version, "", []);

    private async Task AnswerAsync(IEnumerable<KeptRemark> row)
    {
        Guid[] open = [.. row.Where(remark => remark.Answer.Kind == AnswerKind.None).Select(remark => remark.Id)];
        Guid[] meant = open.Length > 0 ? open : [.. row.Select(remark => remark.Id)];
        Outcome given = await Answers.AnswerAsync(await SignedIn.CallerAsync(), meant, new RemarkAnswer(kind, kind == AnswerKind.Mended ? mendedIn : null, words));
        wrong = given.Messages;
        if (!given.Succeeded) return;
        answering = null;
        await Changed.InvokeAsync();
    }

    private string Say(RemarkAnswer answer) => answer.Kind switch
    {
        AnswerKind.Mended => Words["AnsweredMended", answer.MendedIn ?? 0],
        AnswerKind.AsIntended => Words["AnsweredAsIntended"],
        _ => answer.Words,
    };
}
