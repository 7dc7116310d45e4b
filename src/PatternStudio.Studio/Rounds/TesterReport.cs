using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Rounds;

/// <summary>What a tester reports of one piece, bound to the version that she worked from. Kept in SI base units.</summary>
public sealed class TesterReport
{
    /// <summary>Longest name of a yarn.</summary>
    public const int YarnLength = 200;

    /// <summary>Longest word about the whole.</summary>
    public const int WordsLength = 4_000;

    private TesterReport() { }

    internal TesterReport(Guid id, Guid roundId, Guid testerId, int version, ReportDetails details, DateTimeOffset now)
    {
        (Id, RoundId, TesterId, Version, Sent) = (id, roundId, testerId, version, now);
        Change(details, now);
    }

    public Guid Id { get; private set; }

    public Guid RoundId { get; private set; }

    public Guid TesterId { get; private set; }

    /// <summary>Number of the version that she worked from.</summary>
    public int Version { get; private set; }

    /// <summary>0-based size.</summary>
    public int Size { get; private set; }

    public double? Stitches { get; private set; }

    public double? Rows { get; private set; }

    /// <summary>What stitches and rows were counted over.</summary>
    public double? OverMetres { get; private set; }

    public double? StitchesBefore { get; private set; }

    public double? RowsBefore { get; private set; }

    public double? HookMetres { get; private set; }

    public string Yarn { get; private set; } = "";

    public double? YarnKilograms { get; private set; }

    public double? BallMetres { get; private set; }

    public double? BallKilograms { get; private set; }

    public double? WidthMetres { get; private set; }

    public double? HeightMetres { get; private set; }

    public double? Minutes { get; private set; }

    public string Words { get; private set; } = "";

    public Guid? PhotoId { get; private set; }

    public DateTimeOffset Sent { get; private set; }

    public DateTimeOffset Changed { get; private set; }

    /// <summary>Goes up with every change, so that of two changes at the same time one is noticed and done again.</summary>
    public int RowVersion { get; private set; }

    internal ReportDetails Details => new(Size)
    {
        Stitches = Stitches,
        Rows = Rows,
        OverCm = Si.Centimetres(OverMetres),
        StitchesBefore = StitchesBefore,
        RowsBefore = RowsBefore,
        HookMm = Si.Millimetres(HookMetres),
        Yarn = Yarn,
        YarnGrams = Si.Grams(YarnKilograms),
        BallMetres = BallMetres,
        BallGrams = Si.Grams(BallKilograms),
        WidthCm = Si.Centimetres(WidthMetres),
        HeightCm = Si.Centimetres(HeightMetres),
        Minutes = Minutes,
        Words = Words,
    };

    internal void Change(ReportDetails details, DateTimeOffset now)
    {
        (Size, Stitches, Rows, OverMetres) = (details.Size, details.Stitches, details.Rows, details.OverCm / 100);
        (StitchesBefore, RowsBefore, HookMetres) = (details.StitchesBefore, details.RowsBefore, details.HookMm / 1000);
        (Yarn, YarnKilograms, BallMetres, BallKilograms) = (details.Yarn, details.YarnGrams / 1000, details.BallMetres, details.BallGrams / 1000);
        (WidthMetres, HeightMetres, Minutes, Words) = (details.WidthCm / 100, details.HeightCm / 100, details.Minutes, details.Words);
        Changed = now;
        RowVersion++;
    }

    internal void Show(Guid photoId) => PhotoId = photoId;
}
