namespace Hypocaust.Layout;

/// <summary>Leads the two ends of each loop over the apron to their outlets: in the order round the apron, so none crosses another.</summary>
internal static class ManifoldTails
{
    // common practice, no source: outlets of a manifold stand 50 mm apart
    private const double OutletM = 0.05;

    /// <summary>For each loop the outlets at the start and at the end of its walk.</summary>
    public static (Spot First, Spot Last)[] Of(
        Lattice lattice,
        ManifoldPad pad,
        IReadOnlyList<LoopField> loops,
        Spot manifold
    )
    {
        var wall = pad.WallTo - pad.WallFrom;
        var width = wall.Norm;
        var along = wall * (1 / width);
        var middle = (pad.WallFrom + pad.WallTo) * 0.5;
        var ends = new List<(int Loop, bool Last, double Angle)>();
        for (var i = 0; i < loops.Count; i++)
        {
            var facing = (int)loops[i].Facing;
            ends.Add((i, false, Angle(lattice.Corner(loops[i].Root, (facing + 1) % 4))));
            ends.Add((i, true, Angle(lattice.Corner(loops[i].Root, facing))));
        }

        double Angle(Spot at)
        {
            var from = at - middle;
            return Math.Atan2(Math.Max(0, along.Cross(from)), along.Dot(from));
        }

        var pitch = Math.Min(OutletM, width / Math.Max(1, ends.Count - 1));
        var half = pitch * (ends.Count - 1) / 2;
        var room = Math.Max(0, (width / 2) - half);
        var centre = middle + (along * Math.Clamp(along.Dot(manifold - middle), -room, room));
        var found = new (Spot First, Spot Last)[loops.Count];
        var place = 0;
        foreach (var (loop, last, _) in ends.OrderBy(end => end.Angle))
        {
            var outlet = centre + (along * (half - (pitch * place++)));
            if (last)
            {
                found[loop].Last = outlet;
            }
            else
            {
                found[loop].First = outlet;
            }
        }

        return found;
    }
}
