using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Exchange;

/// <summary>A design from an archive, computed and ready to be stored.</summary>
internal sealed class Brought
{
    private Guid? gauge;
    private Guid? onCard;
    private ArchivedDesign stood = null!;

    public required Design Design { get; init; }

    public List<DesignVersion> Versions { get; } = [];

    public List<Computation> Computations { get; } = [];

    public required DesignFace Face { get; init; }

    public List<Swatch> Swatches { get; } = [];

    public List<Photo> Photos { get; } = [];

    public List<DesignPhoto> DesignPhotos { get; } = [];

    public List<ColourYarn> Colours { get; } = [];

    public List<Reservation> Reservations { get; } = [];

    public IEnumerable<string> Tags => stood.Tags.Select(Wording.Tidy);

    /// <param name="accounts">Accounts of the studio by e-mail address: who saved a version elsewhere and is nobody here stays unnamed.</param>
    public static Brought Make(
        Caller caller, ReadDesign read, string title, Shelved shelved, IReadOnlyDictionary<string, Guid> accounts, DateTimeOffset now)
    {
        ArchivedDesign from = read.Design;
        var design = new Design(Guid.CreateVersion7(now), caller.StudioId, title, now);
        var made = new Brought { Design = design, Face = new DesignFace(design.Id), stood = from };
        for (int i = 0; i < from.Versions.Count; i++)
        {
            ArchivedVersion version = from.Versions[i];
            made.Versions.Add(design.Save(read.Texts[i], accounts.GetValueOrDefault(version.SavedBy ?? ""), Moment(version.SavedAt)));
            if (i < from.Versions.Count - 1) made.Computations.Add(new Computation(design.Id, version.Computed with { Version = version.Number, ComputedAt = Moment(version.Computed.ComputedAt) }));
        }

        Yarn? yarn = from.Yarn is { } id ? shelved.Yarns[id] : null;
        design.MakeOf(yarn?.Id, now);
        foreach (ArchivedSwatch swatch in from.Swatches) made.Add(caller, swatch, from.Gauge, read, shelved, now);
        foreach (ArchivedPhoto photo in from.Photos ?? []) made.Add(caller, photo, read, now);
        made.Colours.AddRange((from.Colours ?? []).DistinctBy(it => it.Colour).Select(it => new ColourYarn(design.Id, it.Colour, shelved.Yarns[it.Yarn].Id)));
        made.Reservations.AddRange(from.Reserved.Where(it => shelved.Lots.ContainsKey(it.Lot) && it.Grams is > 0 and <= 1_000_000)
            .DistinctBy(it => it.Lot).Select(it => new Reservation(design.Id, shelved.Lots[it.Lot], it.Grams)));
        made.Reckon(from, shelved, yarn, now);
        return made;
    }

    /// <summary>To be done once the design is stored: its gauge, and the state and moments that it had.</summary>
    public void Finish()
    {
        Design.MeasureBy(gauge, Design.Updated);
        Design.Show(onCard, Design.Updated);
        Design.StandAs(stood.State, Moment(stood.Created), Moment(stood.Updated), stood.Deleted is { } deleted ? Moment(deleted) : null);
    }

    private void Add(Caller caller, ArchivedSwatch from, Guid? chosen, ReadDesign read, Shelved shelved, DateTimeOffset now)
    {
        Guid? yarn = from.Details.YarnId is { } id ? shelved.Yarns[id].Id : null;
        var swatch = new Swatch(Guid.CreateVersion7(now), Design.Id, from.Details with { YarnId = yarn });
        Swatches.Add(swatch);
        if (from.Id == chosen) gauge = swatch.Id;
        if (from.Photo is { } photo) swatch.Show(Keep(caller, read.Photos[photo], now));
    }

    private void Add(Caller caller, ArchivedPhoto from, ReadDesign read, DateTimeOffset now)
    {
        Guid kept = Keep(caller, read.Photos[from.Id], now);
        DesignPhotos.Add(new DesignPhoto(Design.Id, kept, DesignPhotos.Count + 1, Wording.Tidy(from.Caption)));
        if (from.Id == stood.OnCard) onCard = kept;
    }

    private Guid Keep(Caller caller, PreparedPhoto photo, DateTimeOffset now)
    {
        var kept = new Photo(Guid.CreateVersion7(now), caller.StudioId, photo, now);
        Photos.Add(kept);
        return kept.Id;
    }

    private void Reckon(ArchivedDesign from, Shelved shelved, Yarn? yarn, DateTimeOffset now)
    {
        IEnumerable<ArchivedSwatch> ordered = from.Swatches.OrderByDescending(swatch => swatch.Id == from.Gauge).ThenByDescending(swatch => swatch.Details.MeasuredOn).ThenByDescending(swatch => swatch.Id);
        MeasuredSwatch[] swatches = from.Gauge is null ? []
            : [.. ordered.Select(swatch => new MeasuredSwatch(swatch.Details, swatch.Details.YarnId is { } id ? shelved.Yarns[id].Details : null))];
        Reckoned reckoned = DesignResults.Reckon(Design.Text, new DesignMaterials(swatches, yarn?.Details));
        Computations.Add(new Computation(Design.Id, Design.LatestVersion, reckoned.Results, now));
        Face.Show(Design.KeyOf(Design.Text), reckoned.Results);
        Face.Draw(SmallChart.Draw(reckoned.Pattern));
    }

    /// <summary>In whole microseconds: PostgreSQL keeps no finer ones.</summary>
    private static DateTimeOffset Moment(DateTimeOffset moment) => moment.ToUniversalTime().AddTicks(-(moment.Ticks % TimeSpan.TicksPerMicrosecond));
}
