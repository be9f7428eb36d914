using Hypocaust.Floor;
using Hypocaust.Floor.Section;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Floor.Section;

public sealed class Scratch
{
    [Fact]
    public void Measure()
    {
        foreach (var n in new[] { 3, 4, 6, 8, 16 })
        {
            foreach (var row in ReferenceCsv.Table("section2d.csv"))
            {
                var t = System.Diagnostics.Stopwatch.GetTimestamp();
                var s = FloorSection2D.Solve(Section2D.Read(row).BuildUp(), new(n)).Value;
                var ms = System.Diagnostics.Stopwatch.GetElapsedTime(t).TotalMilliseconds;
                var (w, b) = (
                    row.Number("fluid_C") - row.Number("room_C"),
                    row.Number("below_C") - row.Number("room_C")
                );
                var up = 100 * (s.Response.UpFluxWPerM2(w, b) / row.Number("q_up_W_m2") - 1);
                var down = s.Response.DownFluxWPerM2(w, b) - row.Number("q_down_W_m2");
                var hot =
                    s.Response.WarmestExcessK(w, b)
                    + row.Number("room_C")
                    - row.Number("t_surface_max_C");
                var cold =
                    s.Response.ColdestExcessK(w, b)
                    + row.Number("room_C")
                    - row.Number("t_surface_min_C");
                Console.WriteLine(
                    $"{n} {row["case"], -24} up {up:0.000} % down {down:0.0000} hot {hot:0.0000} cold {cold:0.0000} est {s.ErrorPercent:0.000} cells {s.Cells} it {s.Iterations} res {s.Residual:0.0e0} {ms:0.00} ms"
                );
            }
        }
    }
}
