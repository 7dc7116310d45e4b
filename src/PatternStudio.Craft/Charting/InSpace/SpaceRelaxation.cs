using PatternStudio.Craft.Charting.Layout;

namespace PatternStudio.Craft.Charting.InSpace;

/// <summary>
/// Lets a net come to rest in space. Bars keep their length and nothing else; a little stiffness against bending keeps the fabric smooth. Begun from the flat layout with a
/// slight bowl and slight waves, so that it may rise or wave where flat lengths don't fit, and falls flat where they do.
/// </summary>
internal sealed class SpaceRelaxation
{
    private const double Bending = 0.015;
    private const double Seed = 0.25;
    private const int Waves = 5;

    private readonly FabricNet net;
    private readonly int[] starts;
    private readonly int[] nodes;
    private readonly double[] shares;
    private readonly double[] lengths;
    private readonly (int Before, int At, int After)[] bends;
    private readonly double[] diagonal;
    private readonly double[] diagonalOfHeight;

    public SpaceRelaxation(FabricNet net, Point[] places, IEnumerable<(int Before, int At, int After)> bends)
    {
        this.net = net;
        this.bends = [.. bends];
        (starts, nodes, shares) = net.Arrays();
        lengths = [.. net.Rest.Select(rest => rest.Length)];
        X = [.. places.Select(place => place.X)];
        Y = [.. places.Select(place => place.Y)];
        Z = Seeded(places);
        diagonal = new double[net.Nodes];
        for (int bar = 0; bar < net.Bars; bar++)
            for (int i = starts[bar]; i < starts[bar + 1]; i++)
                diagonal[nodes[i]] += net.Stiffness[bar] * shares[i] * shares[i];
        for (int i = 0; i < diagonal.Length; i++) diagonal[i] = Math.Max(diagonal[i], 1e-6);
        diagonalOfHeight = (double[])diagonal.Clone();
        foreach ((int before, int at, int after) in this.bends)
        {
            diagonalOfHeight[at] += Bending * 4;
            diagonalOfHeight[before] += Bending;
            diagonalOfHeight[after] += Bending;
        }
    }

    public double[] X { get; }

    public double[] Y { get; }

    public double[] Z { get; }

    public void Run(int turns, int steps)
    {
        int count = net.Nodes;
        for (int turn = 0; turn < turns; turn++)
        {
            var right = new double[3][];
            for (int axis = 0; axis < 3; axis++) right[axis] = new double[count];
            for (int bar = 0; bar < net.Bars; bar++)
            {
                (double dx, double dy, double dz) = (Along(bar, X), Along(bar, Y), Along(bar, Z));
                double length = Math.Sqrt((dx * dx) + (dy * dy) + (dz * dz));
                double scale = length < 1e-9 ? 0 : net.Stiffness[bar] * lengths[bar] / length;
                for (int i = starts[bar]; i < starts[bar + 1]; i++)
                {
                    right[0][nodes[i]] += shares[i] * dx * scale;
                    right[1][nodes[i]] += shares[i] * dy * scale;
                    right[2][nodes[i]] += shares[i] * dz * scale;
                }
            }
            ConjugateGradients.Solve(Multiply, X, right[0], diagonal, steps);
            ConjugateGradients.Solve(Multiply, Y, right[1], diagonal, steps);
            ConjugateGradients.Solve(MultiplyHeights, Z, right[2], diagonalOfHeight, steps);
        }
    }

    private static double[] Seeded(Point[] places)
    {
        if (places.Length == 0) return [];
        Point middle = places.Aggregate((sum, at) => sum + at) * (1.0 / places.Length);
        double reach = Math.Max(1, places.Max(at => (at - middle).Length));
        return [.. places.Select(at =>
        {
            Point from = at - middle;
            double share = from.Length / reach;
            return Seed * share * share * (1 + Math.Cos(Waves * Math.Atan2(from.Y, from.X)));
        })];
    }

    private double Along(int bar, double[] at)
    {
        double sum = 0;
        for (int i = starts[bar]; i < starts[bar + 1]; i++) sum += shares[i] * at[nodes[i]];
        return sum;
    }

    private void Multiply(double[] by, double[] product)
    {
        Array.Clear(product);
        for (int bar = 0; bar < net.Bars; bar++)
        {
            double pull = net.Stiffness[bar] * Along(bar, by);
            for (int i = starts[bar]; i < starts[bar + 1]; i++) product[nodes[i]] += shares[i] * pull;
        }
    }

    /// <summary>Heights resist bending too.</summary>
    private void MultiplyHeights(double[] by, double[] product)
    {
        Multiply(by, product);
        foreach ((int before, int at, int after) in bends)
        {
            double bend = Bending * ((2 * by[at]) - by[before] - by[after]);
            product[at] += 2 * bend;
            product[before] -= bend;
            product[after] -= bend;
        }
    }
}
