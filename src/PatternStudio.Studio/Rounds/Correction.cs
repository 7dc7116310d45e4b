namespace PatternStudio.Studio.Rounds;

/// <summary>What was wrong in a published pattern, and is right from a version on.</summary>
public sealed class Correction
{
    /// <summary>Longest correction.</summary>
    public const int WordsLength = 4_000;

    private Correction() { }

    internal Correction(Guid id, Guid designId, CorrectionDetails details)
    {
        (Id, DesignId) = (id, designId);
        (On, Version, Words) = (details.On, details.Version, details.Words);
    }

    public Guid Id { get; private set; }

    public Guid DesignId { get; private set; }

    public DateOnly On { get; private set; }

    /// <summary>The version that is right.</summary>
    public int Version { get; private set; }

    public string Words { get; private set; } = "";

    /// <summary>The day on which it was last said otherwise; null where it stands as first published.</summary>
    public DateOnly? Changed { get; private set; }

    /// <summary>The day on which it was withdrawn; null while it holds. It stays to be read: somebody may have followed it.</summary>
    public DateOnly? Withdrawn { get; private set; }

    internal void Change(int version, string words, DateOnly on) => (Version, Words, Changed) = (version, words, on);

    internal void Withdraw(DateOnly on) => Withdrawn ??= on;
}

/// <summary>What a correction said before it was changed.</summary>
public sealed class CorrectionWording
{
    private CorrectionWording() { }

    internal CorrectionWording(Guid id, Correction correction)
    {
        (Id, CorrectionId) = (id, correction.Id);
        (Since, Version, Words) = (correction.Changed ?? correction.On, correction.Version, correction.Words);
    }

    public Guid Id { get; private set; }

    public Guid CorrectionId { get; private set; }

    /// <summary>The day from which it said so.</summary>
    public DateOnly Since { get; private set; }

    public int Version { get; private set; }

    public string Words { get; private set; } = "";
}

/// <summary>A correction.</summary>
/// <param name="On">The day it was found.</param>
/// <param name="Version">The version that is right.</param>
/// <param name="Words">1 to <see cref="Correction.WordsLength"/> characters.</param>
public sealed record CorrectionDetails(DateOnly On, int Version, string Words);

/// <summary>The address under which everybody reads a design's corrections.</summary>
public sealed class CorrectionPage
{
    private CorrectionPage() { }

    internal CorrectionPage(Guid id, Guid designId) => (Id, DesignId) = (id, designId);

    /// <summary>Stands in the address. Nothing of the studio can be told from it.</summary>
    public Guid Id { get; private set; }

    public Guid DesignId { get; private set; }
}
