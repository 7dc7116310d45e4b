namespace PatternStudio.Studio.Designs;

/// <summary>Somebody saved a design.</summary>
/// <param name="SavedBy">Who, as the studio names its members.</param>
public sealed record SavedElsewhere(Guid DesignId, int Version, string Text, string SavedBy, DateTimeOffset SavedAt);

/// <summary>Tells open desks of saves at once. It reaches the desks of this program; one at another program of the same store learns of it when it saves.</summary>
public sealed class SavedNews
{
    private readonly Lock gate = new();
    private readonly Dictionary<Guid, List<Action<SavedElsewhere>>> listeners = [];

    /// <summary>Listens to the saves of a design until disposed. Called on the thread that saves: hand the work on and return.</summary>
    public IDisposable Listen(Guid designId, Action<SavedElsewhere> told)
    {
        lock (gate)
        {
            if (!listeners.TryGetValue(designId, out List<Action<SavedElsewhere>>? heard)) listeners[designId] = heard = [];
            heard.Add(told);
        }

        return new Ear(this, designId, told);
    }

    internal void Tell(SavedElsewhere saved)
    {
        Action<SavedElsewhere>[] heard;
        lock (gate) heard = [.. listeners.GetValueOrDefault(saved.DesignId) ?? []];
        foreach (Action<SavedElsewhere> told in heard) told(saved);
    }

    private void Leave(Guid designId, Action<SavedElsewhere> told)
    {
        lock (gate)
        {
            if (!listeners.TryGetValue(designId, out List<Action<SavedElsewhere>>? heard)) return;
            heard.Remove(told);
            if (heard.Count == 0) listeners.Remove(designId);
        }
    }

    private sealed class Ear(SavedNews news, Guid designId, Action<SavedElsewhere> told) : IDisposable
    {
        public void Dispose() => news.Leave(designId, told);
    }
}
