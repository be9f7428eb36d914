namespace Hypocaust.Layout;

/// <summary>A point of the floor plan, m: x to the east, y to the north.</summary>
/// <param name="X">Eastwards, m.</param>
/// <param name="Y">Northwards, m.</param>
public readonly record struct Spot(double X, double Y)
{
    /// <summary>Sum.</summary>
    public static Spot operator +(Spot a, Spot b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Difference.</summary>
    public static Spot operator -(Spot a, Spot b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>Scaled.</summary>
    public static Spot operator *(Spot a, double by) => new(a.X * by, a.Y * by);

    /// <summary>Distance from the origin, m.</summary>
    public double Norm => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>Distance to another point, m.</summary>
    public double To(Spot other) => (other - this).Norm;

    /// <summary>The point turned about the origin, counter-clockwise.</summary>
    /// <param name="cosine">Cosine of the angle.</param>
    /// <param name="sine">Sine of the angle.</param>
    public Spot Turned(double cosine, double sine) =>
        new((X * cosine) - (Y * sine), (X * sine) + (Y * cosine));

    internal double Cross(Spot other) => (X * other.Y) - (Y * other.X);

    internal double Dot(Spot other) => (X * other.X) + (Y * other.Y);
}

/// <summary>A straight piece between two points, m: a wall, a joint.</summary>
/// <param name="From">Where it starts.</param>
/// <param name="To">Where it ends.</param>
public readonly record struct Edge(Spot From, Spot To)
{
    /// <summary>Length, m.</summary>
    public double Length => From.To(To);

    /// <summary>Distance of a point, m.</summary>
    public double Distance(Spot point)
    {
        var along = To - From;
        var square = along.Dot(along);
        var share = square > 0 ? Math.Clamp((point - From).Dot(along) / square, 0, 1) : 0;
        return point.To(From + (along * share));
    }

    /// <summary>Distance of another piece, m; 0 where they meet.</summary>
    public double Distance(Edge other) =>
        Meets(other)
            ? 0
            : Math.Min(
                Math.Min(Distance(other.From), Distance(other.To)),
                Math.Min(other.Distance(From), other.Distance(To))
            );

    /// <summary>Whether both share a point.</summary>
    public bool Meets(Edge other)
    {
        var (r, s, d) = (To - From, other.To - other.From, other.From - From);
        var cross = r.Cross(s);
        // nearly parallel: the point of meeting is rounding noise, so only a true touch counts
        if (Math.Abs(cross) < 1e-9 * r.Norm * s.Norm)
        {
            return Distance(other.From) < 1e-12
                || Distance(other.To) < 1e-12
                || other.Distance(From) < 1e-12;
        }

        var (t, u) = (d.Cross(s) / cross, d.Cross(r) / cross);
        return t is >= 0 and <= 1 && u is >= 0 and <= 1;
    }
}
