namespace PatternStudio.Studio.Rounds;

/// <summary>What testers are asked for; several together.</summary>
[Flags]
public enum AskedFor
{
    None = 0,
    Gauge = 1,
    BeforeBlocking = 2,
    Hook = 4,
    Yarn = 8,
    Size = 16,
    Time = 32,
    Remarks = 64,

    /// <summary>Photos of the piece and of places that are not clear.</summary>
    Photos = 128,

    Everything = Gauge | BeforeBlocking | Hook | Yarn | Size | Time | Remarks | Photos,
}

/// <summary>A test round: strangers work one version of a design and report.</summary>
public sealed class TestRound
{
    /// <summary>Longest note to the testers.</summary>
    public const int NoteLength = 2_000;

    /// <summary>Longest list of shown versions: some hundreds of them.</summary>
    public const int ShownLength = 2_000;

    /// <summary>Most testers of one round.</summary>
    public const int MostTesters = 200;

    private TestRound() { }

    internal TestRound(Guid id, Guid designId, RoundPlan plan, DateTimeOffset now)
    {
        (Id, DesignId, Created) = (id, designId, now);
        Change(plan);
    }

    public Guid Id { get; private set; }

    public Guid DesignId { get; private set; }

    /// <summary>Number of the version that is worked now.</summary>
    public int Version { get; private set; }

    /// <summary>The versions that testers were shown, in order, this one the last: '1,3'. A report may belong to any of them.</summary>
    public string ShownVersions { get; private set; } = "";

    public DateOnly Opens { get; private set; }

    /// <summary>The last day.</summary>
    public DateOnly Ends { get; private set; }

    /// <summary>How many testers are wanted.</summary>
    public int Testers { get; private set; }

    /// <summary>0-based sizes that at least one tester each is wanted for: '0,2'.</summary>
    public string Sizes { get; private set; } = "";

    public AskedFor Asked { get; private set; }

    /// <summary>False for a blind test: the words alone.</summary>
    public bool ShowsChart { get; private set; }

    public string Note { get; private set; } = "";

    public DateTimeOffset Created { get; private set; }

    /// <summary>When it was ended before its time; null where it was not.</summary>
    public DateTimeOffset? Ended { get; private set; }

    /// <summary>Goes up with every change, so that of two changes at the same time one is noticed and done again.</summary>
    public int RowVersion { get; private set; }

    internal RoundPlan Plan => new(Version, Opens, Ends, Testers, NumberList.Read(Sizes), Asked, ShowsChart, Note);

    internal IReadOnlyList<int> Shown => NumberList.Read(ShownVersions);

    internal void Change(RoundPlan plan)
    {
        if (plan.Version != Version) ShownVersions = NumberList.Write([.. Shown.Where(number => number != plan.Version), plan.Version]);
        Version = plan.Version;
        (Opens, Ends, Testers, Sizes) = (plan.Opens, plan.Ends, plan.Testers, NumberList.Write(plan.Sizes.Distinct().Order()));
        (Asked, ShowsChart, Note) = (plan.Asked, plan.ShowsChart, plan.Note);
        RowVersion++;
    }

    internal void End(DateTimeOffset now)
    {
        Ended ??= now;
        RowVersion++;
    }
}

/// <summary>What a round is to be.</summary>
/// <param name="Version">A version of the design, which never changes.</param>
/// <param name="Opens">The first day.</param>
/// <param name="Ends">The last day; not before <paramref name="Opens"/>, at most two years after it.</param>
/// <param name="Testers">1 to <see cref="TestRound.MostTesters"/>.</param>
/// <param name="Sizes">0-based sizes that are to be tested; at least one.</param>
/// <param name="Note">What the designer says to the testers; at most <see cref="TestRound.NoteLength"/> characters.</param>
public sealed record RoundPlan(
    int Version, DateOnly Opens, DateOnly Ends, int Testers, IReadOnlyList<int> Sizes, AskedFor Asked, bool ShowsChart, string Note)
{
    /// <summary>The moment from which links open: the first day has begun somewhere on earth (UTC + 14).</summary>
    internal static DateTimeOffset StartOf(DateOnly opens) => new DateTimeOffset(opens.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero).AddHours(-14);

    /// <summary>The moment after which nothing is taken: the last day is over everywhere on earth (UTC − 12).</summary>
    internal static DateTimeOffset EndOf(DateOnly ends) => new(ends.AddDays(1).ToDateTime(new TimeOnly(12, 0)), TimeSpan.Zero);
}

/// <summary>Sizes and versions as the store keeps them: '0,2'.</summary>
internal static class NumberList
{
    public static IReadOnlyList<int> Read(string numbers) =>
        numbers.Length == 0 ? [] : [.. numbers.Split(',').Select(number => int.Parse(number, System.Globalization.CultureInfo.InvariantCulture))];

    public static string Write(IEnumerable<int> numbers) => string.Join(',', numbers);
}
