namespace PatternStudio.Studio.Accounts;

/// <summary>Which unit a length is told in first; the other stands beside it.</summary>
public enum LengthUnit
{
    Centimetres,
    Inches,
}

/// <summary>How the whole part of a number is parted from its decimals.</summary>
public enum DecimalSign
{
    /// <summary>19.5</summary>
    Point,

    /// <summary>19,5</summary>
    Comma,
}

/// <summary>How a day is written.</summary>
public enum DateForm
{
    /// <summary>25 Nov 2026</summary>
    DayMonth,

    /// <summary>Nov 25, 2026</summary>
    MonthDay,

    /// <summary>25.11.2026</summary>
    Dotted,

    /// <summary>2026-11-25, after ISO 8601.</summary>
    YearFirst,
}

/// <summary>How somebody likes to read the pages. Nothing here changes a design.</summary>
public sealed record Preferences
{
    public LengthUnit Lengths { get; init; }

    public DecimalSign Decimals { get; init; }

    public DateForm Dates { get; init; }

    /// <summary>True where charts are shown for the left hand first.</summary>
    public bool LeftHanded { get; init; }

    /// <summary>True once the tour was taken or put away.</summary>
    public bool TourDone { get; init; }
}

/// <summary>The preferences of one account, as stored.</summary>
public sealed class KeptPreferences
{
    private KeptPreferences() { }

    internal KeptPreferences(Guid accountId) => AccountId = accountId;

    public Guid AccountId { get; private set; }

    public LengthUnit Lengths { get; private set; }

    public DecimalSign Decimals { get; private set; }

    public DateForm Dates { get; private set; }

    public bool LeftHanded { get; private set; }

    public bool TourDone { get; private set; }

    internal Preferences Value => new() { Lengths = Lengths, Decimals = Decimals, Dates = Dates, LeftHanded = LeftHanded, TourDone = TourDone };

    internal void Take(Preferences wanted) =>
        (Lengths, Decimals, Dates, LeftHanded, TourDone) = (wanted.Lengths, wanted.Decimals, wanted.Dates, wanted.LeftHanded, wanted.TourDone);
}
