using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace PatternStudio.Studio.Rounds;

/// <summary>A link that opens a round to whoever has it. The store knows only the hash of its token: who reads the store can open nothing.</summary>
public sealed class ShareLink
{
    /// <summary>Most reports that one link may send.</summary>
    public const int MostReportsOfALink = 200;

    private ShareLink() { }

    internal ShareLink(Guid id, Guid roundId, Guid? testerId, string token, LinkTerms terms, DateTimeOffset now)
    {
        (Id, RoundId, TesterId, Created) = (id, roundId, testerId, now);
        (TokenHash, LastDay, MostReports, BeganWith) = (LinkToken.Hash(token), terms.LastDay, terms.MostReports, terms.BeganWith);
        // As long-lived as a round can be, where it has no day of its own: the round's last day closes it before.
        Expires = terms.LastDay is { } day ? RoundPlan.EndOf(day) : now.AddYears(2);
    }

    public Guid Id { get; private set; }

    public Guid RoundId { get; private set; }

    /// <summary>Whose it is; null for a link that is for all.</summary>
    public Guid? TesterId { get; private set; }

    /// <summary>SHA-256 of the token.</summary>
    public byte[] TokenHash { get; private set; } = [];

    public DateTimeOffset Created { get; private set; }

    /// <summary>The last day on which it opens; null for the round's.</summary>
    public DateOnly? LastDay { get; private set; }

    public DateTimeOffset Expires { get; private set; }

    /// <summary>When it was taken back; null while it opens.</summary>
    public DateTimeOffset? Revoked { get; private set; }

    /// <summary>How many reports it may send.</summary>
    public int MostReports { get; private set; }

    /// <summary>How many it has sent; counted up by the store itself, in the transaction that keeps the report.</summary>
    public int Reports { get; private set; }

    /// <summary>The version that was shown when it was opened first; null while nobody has opened it, and for a link that is for all.</summary>
    public int? BeganWith { get; private set; }

    internal void Revoke(DateTimeOffset now) => Revoked ??= now;
}

/// <summary>What a link may do.</summary>
internal readonly record struct LinkTerms(int MostReports, DateOnly? LastDay, int? BeganWith);

/// <summary>Tokens of links.</summary>
internal static class LinkToken
{
    private const int Bytes = 32;

    /// <summary>256 bits of chance from the operating system, in 43 letters that an address can hold.</summary>
    public static string New() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(Bytes));

    public static byte[] Hash(string token) => SHA256.HashData(Encoding.UTF8.GetBytes(token));
}
