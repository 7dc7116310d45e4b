namespace PatternStudio.Craft.Charting.Layout;

/// <summary>Spreads the cells of a round along its frame: corners in the corners, the rest between them, evenly but drawn toward what each stands on.</summary>
internal sealed class BorderSpread(Frame frame, double height, Sprout[] sprouts)
{
    private const double InCorner = 1000;
    private const double OverFoot = 0.6;
    private const double AtStart = 4;

    /// <summary>Neighbours keep their distance so many times harder than their feet pull.</summary>
    private const double Together = 4;
    private const double Clear = 4.5;

    /// <summary>Room for the round's number between its end and its start, in stitch widths.</summary>
    private const double Seam = 1.1;

    /// <summary>Where each cell that takes room is along the frame.</summary>
    /// <param name="taking">Those cells.</param>
    /// <param name="widths">Room of all cells.</param>
    /// <param name="corners">Cell indexes of the round's corners.</param>
    public double[] Of(int[] taking, double[] widths, IReadOnlyList<int> corners)
    {
        int count = taking.Length;
        int direction = Direction(taking);
        Dictionary<int, double> inCorner = InCorners(corners);
        AtTurns(taking, widths, direction, inCorner);
        int first = Math.Max(0, Array.FindIndex(taking, inCorner.ContainsKey));
        double[] along = From(first == 0 ? taking : [.. taking[first..], .. taking[..first]], taking[0], direction, widths, inCorner);
        return [.. along[(count - first)..], .. along[..(count - first)]];
    }

    /// <summary>Begun in a corner, so that both ends of the line to be solved are known.</summary>
    private double[] From(int[] taking, int start, int direction, double[] widths, Dictionary<int, double> inCorner)
    {
        int count = taking.Length;
        double scale = frame.Around / Math.Max(1e-6, taking.Sum(i => widths[i]) + Seam);
        var wanted = new double?[count + 1];
        var weights = new double[count + 1];
        var even = new double[count + 1];
        double before = 0;
        for (int k = 0; k <= count; k++)
        {
            int i = taking[k % count];
            if (k > 0) even[k] = even[k - 1] + (direction * scale * (((widths[taking[k - 1]] + widths[i]) / 2) + (i == start ? Seam : 0)));
            double expected = k == 0 ? 0 : before + even[k] - even[k - 1];
            before = expected;
            bool corner = inCorner.TryGetValue(i, out double at);
            if (!corner && !sprouts[i].Stands) continue;
            if (!corner) at = frame.Along(sprouts[i].Base, sprouts[i].Up);
            wanted[k] = before = k == 0 ? at : k == count ? wanted[0]!.Value + (direction * frame.Around) : expected + frame.Way(expected, at);
            weights[k] = corner ? InCorner : k == 0 || k == count ? AtStart : sprouts[i].OnEdge ? 0 : OverFoot;
        }
        return Solve(wanted, weights, even)[..count];
    }

    /// <summary>Corners of the round that stand near a corner of the frame, each corner once.</summary>
    private Dictionary<int, double> InCorners(IReadOnlyList<int> corners)
    {
        var found = new Dictionary<int, double>();
        foreach (int corner in corners)
        {
            double at = frame.Corner(sprouts[corner].Base);
            if ((Inner(at) - sprouts[corner].Base).Length > Clear) continue;
            if (!found.ContainsValue(at)) found[corner] = at;
        }
        return found;
    }

    /// <summary>Where no group of stitches makes a corner, the round turns it at the chain between two sides, or between the last stitch of one and the first of the next.</summary>
    private void AtTurns(int[] taking, double[] widths, int direction, Dictionary<int, double> inCorner)
    {
        int[] standing = [.. Enumerable.Range(0, taking.Length).Where(k => sprouts[taking[k]].Stands)];
        for (int s = 0; s < standing.Length; s++)
        {
            (int before, int after) = (standing[s], standing[(s + 1) % standing.Length]);
            (int from, int to) = (SideOf(taking[before]), SideOf(taking[after]));
            if (to != (from + direction + 4) % 4) continue;
            double corner = frame.Corners[direction > 0 ? to : from];
            if (inCorner.ContainsValue(corner)) continue;
            int between = (after - before + taking.Length) % taking.Length;
            if (between > 1)
            {
                inCorner[taking[(before + (between / 2)) % taking.Length]] = corner;
                continue;
            }
            inCorner[taking[before]] = corner - (direction * widths[taking[before]] / 2);
            inCorner[taking[after]] = corner + (direction * widths[taking[after]] / 2);
        }
    }

    /// <summary>0 for the top, 1 for the left side, 2 for the bottom, 3 for the right side.</summary>
    private int SideOf(int cell)
    {
        double along = frame.Along(sprouts[cell].Base, sprouts[cell].Up);
        return Array.FindLastIndex(frame.Corners, corner => corner <= along) is >= 0 and var side ? side : 0;
    }

    /// <summary>The same corner of the round below.</summary>
    private Point Inner(double corner)
    {
        Frame inner = frame.Grow(-height);
        return inner.At(inner.Corners[Array.IndexOf(frame.Corners, corner)]);
    }

    private int Direction(int[] taking)
    {
        double[] along = [.. taking.Where(i => sprouts[i].Stands).Select(i => frame.Along(sprouts[i].Base, sprouts[i].Up))];
        double way = 0;
        for (int i = 1; i < along.Length; i++) way += Math.Sign(Math.Round(frame.Way(along[i - 1], along[i]), 6));
        return way < 0 ? -1 : 1;
    }

    /// <summary>The places of least strain: a tridiagonal system, eliminated downward and substituted upward.</summary>
    private static double[] Solve(double?[] wanted, double[] weights, double[] even)
    {
        int count = even.Length;
        var diagonal = new double[count];
        var right = new double[count];
        for (int i = 0; i < count; i++)
        {
            diagonal[i] += weights[i] + 1e-9;
            right[i] += weights[i] * (wanted[i] ?? 0);
            if (i == 0) continue;
            double distance = Together * (even[i] - even[i - 1]);
            diagonal[i] += Together;
            diagonal[i - 1] += Together;
            right[i] += distance;
            right[i - 1] -= distance;
        }
        for (int i = 1; i < count; i++)
        {
            double factor = Together / diagonal[i - 1];
            diagonal[i] -= factor * Together;
            right[i] += factor * right[i - 1];
        }
        for (int i = count - 1; i >= 0; i--) right[i] = (right[i] + (i + 1 < count ? Together * right[i + 1] : 0)) / diagonal[i];
        return right;
    }
}
