namespace PatternStudio.Studio.Materials;

/// <summary>Yarn in the cupboard: so much of one yarn from one dye bath.</summary>
public sealed class StashLot
{
    /// <summary>Longest name of a dye lot or a place.</summary>
    public const int NameLength = 100;

    /// <summary>Longest note.</summary>
    public const int NoteLength = 500;

    private StashLot() { }

    internal StashLot(Guid id, Guid studioId, LotDetails details)
    {
        (Id, StudioId) = (id, studioId);
        Change(details);
    }

    public Guid Id { get; private set; }

    public Guid StudioId { get; private set; }

    public Guid YarnId { get; private set; }

    /// <summary>Whole balls.</summary>
    public int Balls { get; private set; }

    /// <summary>What begun balls weigh; null for none.</summary>
    public double? OpenedKilograms { get; private set; }

    public string DyeLot { get; private set; } = "";

    public string Place { get; private set; } = "";

    public string Note { get; private set; } = "";

    /// <summary>Goes up with every change and every reservation, so that two can't set the same ball aside.</summary>
    public int RowVersion { get; private set; }

    internal LotDetails Details => new(YarnId, Balls, Si.Grams(OpenedKilograms), DyeLot, Place, Note);

    internal void Change(LotDetails details)
    {
        (YarnId, Balls, OpenedKilograms) = (details.YarnId, details.Balls, details.OpenedGrams / 1000);
        (DyeLot, Place, Note) = (details.DyeLot, details.Place, details.Note);
        RowVersion++;
    }

    internal void Touch() => RowVersion++;
}

/// <summary>What a design has set aside of a lot.</summary>
public sealed class Reservation
{
    private Reservation() { }

    internal Reservation(Guid designId, Guid lotId, double grams)
    {
        (DesignId, LotId) = (designId, lotId);
        Take(grams);
    }

    public Guid DesignId { get; private set; }

    public Guid LotId { get; private set; }

    public double Kilograms { get; private set; }

    internal void Take(double grams) => Kilograms = grams / 1000;
}
