using Microsoft.Extensions.Localization;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.YarnShelf;

/// <summary>A lot as typed into the form, number by number as written.</summary>
public sealed class LotInput
{
    public Guid YarnId { get; set; }

    public string Balls { get; set; } = "";

    public string OpenedGrams { get; set; } = "";

    public string DyeLot { get; set; } = "";

    public string Place { get; set; } = "";

    public string Note { get; set; } = "";

    /// <summary>A kept lot to be corrected.</summary>
    public static LotInput Of(LotDetails kept)
    {
        var input = new LotInput();
        input.Take(kept);
        return input;
    }

    /// <summary>Puts a kept lot into every field.</summary>
    public void Take(LotDetails kept)
    {
        (YarnId, Balls, OpenedGrams) = (kept.YarnId, Numbers.Write(kept.Balls), Numbers.Write(kept.OpenedGrams));
        (DyeLot, Place, Note) = (kept.DyeLot, kept.Place, kept.Note);
    }

    /// <summary>Reads the form. No balls written are none: a remnant alone is a lot too.</summary>
    public Outcome<LotDetails> Read(IStringLocalizer<YarnWords> words)
    {
        var form = new TypedForm();
        double? balls = form.Optional(nameof(Balls), Balls, Typed.Whole), opened = form.Optional(nameof(OpenedGrams), OpenedGrams, Typed.Grams);
        if (balls is null && opened is null && form.Wrong.Count == 0) form.Refuse(nameof(Balls), words["BallsMissing"]);
        return form.Wrong.Count > 0
            ? Outcome.Refused(form.Wrong)
            : new LotDetails(YarnId, (int)(balls ?? 0), opened, DyeLot.Trim(), Place.Trim(), Note.Trim());
    }
}
