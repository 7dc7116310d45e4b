namespace PatternStudio.Studio.Accounts;

/// <summary>An account's place in a studio.</summary>
public sealed class Membership
{
    private Membership() { }

    internal Membership(Guid accountId, Guid studioId, DateTimeOffset since) =>
        (AccountId, StudioId, Since) = (accountId, studioId, since);

    public Guid AccountId { get; private set; }

    public Guid StudioId { get; private set; }

    public DateTimeOffset Since { get; private set; }
}
