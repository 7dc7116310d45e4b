namespace PatternStudio.Web.Features.Tour;

/// <summary>Where somebody is on the tour; one for each open page.</summary>
public sealed class Guide
{
    /// <summary>The stop she is at; null where no tour is on.</summary>
    public Stop? Here => At is { } at ? Stop.All[at] : null;

    /// <summary>0-based.</summary>
    public int? At { get; private set; }

    public bool IsFirst => At == 0;

    public bool IsLast => At == Stop.All.Count - 1;

    /// <summary>She went to another stop, or the tour is over.</summary>
    public event Action? Moved;

    public void Begin() => GoTo(0);

    public void Next() => GoTo(IsLast ? null : At + 1);

    public void Back() => GoTo(At > 0 ? At - 1 : At);

    public void End() => GoTo(null);

    private void GoTo(int? at)
    {
        At = at;
        Moved?.Invoke();
    }
}
