namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// The fabric as a net of bars: from each cell to its neighbour in the row, as long as both are wide, and from each stitch to what it stands on, as long as it is
/// tall. Bars that meet in one panel (two stitches side by side, their feet, the chains between them) keep their shape together, so a stitch stands upright on its row and a row
/// with more stitches than the one below bends, as fabric does.
/// </summary>
internal sealed class FabricNet
{
    private readonly List<int> starts = [0];
    private readonly List<int> nodes = [];
    private readonly List<double> shares = [];

    /// <summary>Number of nodes: cells that take room in their row, and one for each centre.</summary>
    public int Nodes { get; set; }

    /// <summary>Number of bars.</summary>
    public int Bars => Panel.Count;

    /// <summary>The panel of each bar; bars of a panel turn together.</summary>
    public List<int> Panel { get; } = [];

    /// <summary>How each bar lies in its unturned panel, on paper.</summary>
    public List<Point> Rest { get; } = [];

    /// <summary>How stiff each bar is.</summary>
    public List<double> Stiffness { get; } = [];

    /// <summary>Number of panels.</summary>
    public int Panels { get; set; }

    /// <summary>A bar between two places, each a mix of nodes.</summary>
    public void Add(int panel, Mix from, Mix to, Point rest, double stiffness)
    {
        Add(from, -1);
        Add(to, 1);
        starts.Add(nodes.Count);
        Panel.Add(panel);
        Rest.Add(rest);
        Stiffness.Add(stiffness);
    }

    /// <summary>The net as plain arrays, for counting with.</summary>
    public (int[] Starts, int[] Nodes, double[] Shares) Arrays() => ([.. starts], [.. nodes], [.. shares]);

    private void Add(Mix mix, double sign)
    {
        foreach ((int node, double share) in mix.Parts)
        {
            nodes.Add(node);
            shares.Add(sign * share);
        }
    }
}

/// <summary>A place told by nodes near it: a node itself, a place between two, the middle of several feet. Shares add up to 1.</summary>
internal readonly record struct Mix((int Node, double Share)[] Parts)
{
    public static Mix Of(int node) => new([(node, 1)]);

    public static Mix Between(int from, int to, double share) => new([(from, 1 - share), (to, share)]);

    /// <summary>The middle of several places.</summary>
    public static Mix Middle(IReadOnlyList<Mix> places) =>
        places.Count == 1 ? places[0] : new([.. places.SelectMany(place => place.Parts.Select(part => (part.Node, part.Share / places.Count)))]);

    public Point At(Point[] nodes)
    {
        var at = new Point(0, 0);
        foreach ((int node, double share) in Parts) at += nodes[node] * share;
        return at;
    }
}
