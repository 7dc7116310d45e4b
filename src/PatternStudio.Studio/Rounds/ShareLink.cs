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

    internal ShareLink(Guid id, Guid roundId, Guid? testerId, string token, DateTimeOffset expires, int mostReports, DateTimeOffset now)
    {
        (Id, RoundId, TesterId, Created) = (id, roundId, testerId, now);
        (TokenHash, Expires, MostReports) = (LinkToken.Hash(token), expires, mostReports);
    }

    public Guid Id { get; private set; }

    public Guid RoundId { get; private set; }

    /// <summary>Whose it is; null for a link that is for all.</summary>
    public Guid? TesterId { get; private set; }

    /// <summary>SHA-256 of the token.</summary>
    public byte[] TokenHash { get; private set; } = [];

    public DateTimeOffset Created { get; private set; }

    public DateTimeOffset Expires { get; private set; }

    /// <summary>When it was taken back; null while it opens.</summary>
    public DateTimeOffset? Revoked { get; private set; }

    /// <summary>How many reports it may send.</summary>
    public int MostReports { get; private set; }

    /// <summary>How many it has sent; counted up by the store itself, in the transaction that keeps the report.</summary>
    public int Reports { get; private set; }

    internal void Revoke(DateTimeOffset now) => Revoked ??= now;
}

/// <summary>Tokens of links.</summary>
internal static class LinkToken
{
    private const int Bytes = 32;

    /// <summary>256 bits of chance from the operating system, in 43 letters that an address can hold.</summary>
    public static string New() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(Bytes));

    public static byte[] Hash(string token) => SHA256.HashData(Encoding.UTF8.GetBytes(token));
}
