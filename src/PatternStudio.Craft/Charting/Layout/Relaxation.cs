namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// Lets a net come to rest on paper. In turns, each panel is turned to fit the places as they are, and the places are then moved so that all bars together are least strained: a
/// sparse symmetric system, solved by conjugate gradients from the places as they were. An edited design starts from its old layout and is soon done.
/// </summary>
internal sealed class Relaxation
{
    /// <summary>Places that move less than this, in stitch widths, are at rest.</summary>
    private const double Rest = 0.004;

    private readonly FabricNet net;
    private readonly int[] starts;
    private readonly int[] nodes;
    private readonly double[] shares;
    private readonly double[] x;
    private readonly double[] y;
    private readonly double[] diagonal;

    private readonly Point[] former;
    private readonly double[]? stay;
    private StiffnessMatrix? matrix;

    /// <param name="net">The net.</param>
    /// <param name="places">Where its nodes are.</param>
    /// <param name="stay">How firmly each node stays there, beside a bar's stiffness of 1; null for not at all.</param>
    public Relaxation(FabricNet net, Point[] places, double[]? stay = null)
    {
        (former, this.stay) = (places, stay);
        this.net = net;
        (starts, nodes, shares) = net.Arrays();
        x = [.. places.Select(place => place.X)];
        y = [.. places.Select(place => place.Y)];
        diagonal = new double[net.Nodes];
        for (int bar = 0; bar < net.Bars; bar++)
            for (int i = starts[bar]; i < starts[bar + 1]; i++)
                diagonal[nodes[i]] += net.Stiffness[bar] * shares[i] * shares[i];
        for (int i = 0; i < diagonal.Length; i++)
        {
            diagonal[i] += stay?[i] ?? 0;
            if (diagonal[i] <= 0) diagonal[i] = 1;
        }
    }

    /// <summary>Where each node is now.</summary>
    public Point[] Places => [.. x.Select((at, i) => new Point(at, y[i]))];

    /// <summary>Strain of the net: root mean square of how far bars are from their length and direction in their panel, in stitch widths.</summary>
    public double Strain()
    {
        (double[] cos, double[] sin) = Turns();
        double sum = 0;
        for (int bar = 0; bar < net.Bars; bar++)
        {
            (double wx, double wy) = Wanted(bar, cos, sin);
            double dx = Along(bar, x) - wx;
            double dy = Along(bar, y) - wy;
            sum += (dx * dx) + (dy * dy);
        }
        return Math.Sqrt(sum / Math.Max(1, net.Bars));
    }

    /// <summary>Relaxes for at most so many turns.</summary>
    /// <param name="turns">At most so many.</param>
    /// <param name="steps">Steps of conjugate gradients in each.</param>
    /// <returns>How many turns it took.</returns>
    public int Run(int turns, int steps)
    {
        for (int turn = 0; turn < turns; turn++)
            if (Turn(steps) < Rest)
                return turn + 1;
        return turns;
    }

    /// <summary>One turn; gives the greatest move.</summary>
    private double Turn(int steps)
    {
        matrix ??= new StiffnessMatrix(net, stay);
        (double[] cos, double[] sin) = Turns();
        var right = new double[net.Nodes];
        var above = new double[net.Nodes];
        for (int bar = 0; bar < net.Bars; bar++)
        {
            (double wx, double wy) = Wanted(bar, cos, sin);
            double k = net.Stiffness[bar];
            for (int i = starts[bar]; i < starts[bar + 1]; i++)
            {
                right[nodes[i]] += k * shares[i] * wx;
                above[nodes[i]] += k * shares[i] * wy;
            }
        }
        for (int i = 0; stay is not null && i < stay.Length; i++)
        {
            right[i] += stay[i] * former[i].X;
            above[i] += stay[i] * former[i].Y;
        }
        return Math.Max(Solve(matrix, x, right, diagonal, steps), Solve(matrix, y, above, diagonal, steps));
    }

    private double Along(int bar, double[] at)
    {
        double sum = 0;
        for (int i = starts[bar]; i < starts[bar + 1]; i++) sum += shares[i] * at[nodes[i]];
        return sum;
    }

    private (double X, double Y) Wanted(int bar, double[] cos, double[] sin)
    {
        Point rest = net.Rest[bar];
        int panel = net.Panel[bar];
        return ((cos[panel] * rest.X) - (sin[panel] * rest.Y), (sin[panel] * rest.X) + (cos[panel] * rest.Y));
    }

    /// <summary>How each panel is turned to fit its bars best.</summary>
    private (double[] Cos, double[] Sin) Turns()
    {
        var cos = new double[net.Panels];
        var sin = new double[net.Panels];
        for (int bar = 0; bar < net.Bars; bar++)
        {
            double dx = Along(bar, x);
            double dy = Along(bar, y);
            Point rest = net.Rest[bar];
            double k = net.Stiffness[bar];
            cos[net.Panel[bar]] += k * ((rest.X * dx) + (rest.Y * dy));
            sin[net.Panel[bar]] += k * ((rest.X * dy) - (rest.Y * dx));
        }
        for (int panel = 0; panel < cos.Length; panel++)
        {
            double length = Math.Sqrt((cos[panel] * cos[panel]) + (sin[panel] * sin[panel]));
            (cos[panel], sin[panel]) = length < 1e-12 ? (1, 0) : (cos[panel] / length, sin[panel] / length);
        }
        return (cos, sin);
    }

    /// <summary>Gives the greatest move.</summary>
    private static double Solve(StiffnessMatrix matrix, double[] at, double[] right, double[] diagonal, int steps)
    {
        var before = (double[])at.Clone();
        ConjugateGradients.Solve(matrix.Multiply, at, right, diagonal, steps, share: 1e-8);
        double most = 0;
        for (int i = 0; i < at.Length; i++) most = Math.Max(most, Math.Abs(at[i] - before[i]));
        return most;
    }
}
