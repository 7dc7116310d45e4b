using System.Collections.Concurrent;
using PatternStudio.Studio;

namespace PatternStudio.Web.Features.Designs.Exchange;

/// <summary>Remembers for a few minutes which designs somebody wants to take out: a selection of thousands does not fit into an address.</summary>
public sealed class ExportTickets(TimeProvider clock)
{
    private static readonly TimeSpan Life = TimeSpan.FromMinutes(10);
    private readonly ConcurrentDictionary<Guid, Ticket> tickets = [];

    /// <summary>A ticket for these designs.</summary>
    public Guid Issue(Caller caller, IReadOnlyList<Guid> designs)
    {
        DateTimeOffset now = clock.GetUtcNow();
        foreach ((Guid old, Ticket ticket) in tickets) if (ticket.Until < now) tickets.TryRemove(old, out _);
        var id = Guid.NewGuid();
        tickets[id] = new Ticket(caller, designs, now + Life);
        return id;
    }

    /// <summary>The designs of a ticket; null where it is of somebody else, or too old.</summary>
    public IReadOnlyList<Guid>? Find(Caller caller, Guid id) =>
        tickets.TryGetValue(id, out Ticket? ticket) && ticket.Caller == caller && ticket.Until >= clock.GetUtcNow() ? ticket.Designs : null;

    private sealed record Ticket(Caller Caller, IReadOnlyList<Guid> Designs, DateTimeOffset Until);
}
