namespace Hypocaust.Conduction.Internal;

/// <summary>
/// An approximate, symmetric inverse of the heat balances: whole columns are solved at once, and their number is halved from level
/// to level, the columns staying as they are. Layers, cells of any shape and held cells cost it nothing.
/// </summary>
internal sealed class ColumnMultigrid
{
    private readonly List<ColumnLevel> levels = [];
    private readonly List<FivePointSystem> coarse = [];
    private readonly List<SplitField> corrections = [];

    public ColumnMultigrid(int columns, int rows)
    {
        (Columns, Rows) = (columns, rows);
        levels.Add(new ColumnLevel(columns, rows));
        while (columns > 1)
        {
            columns = (columns + 1) / 2;
            levels.Add(new ColumnLevel(columns, rows));
            coarse.Add(new FivePointSystem(columns, rows));
            corrections.Add(new SplitField(columns, rows));
        }
    }

    public int Columns { get; }

    public int Rows { get; }

    public void Prepare(FivePointSystem system)
    {
        for (var level = 0; level < levels.Count; level++)
        {
            levels[level]
                .Prepare(
                    level == 0 ? system : coarse[level - 1],
                    level < coarse.Count ? coarse[level] : null
                );
        }
    }

    /// <summary>One cycle: temperatures that roughly balance the heat, and the heat that they balance exactly.</summary>
    public void Apply(SplitField heat, SplitField temperatures, SplitField balanced)
    {
        Cycle(0, heat, temperatures);
        heat.Even.CopyTo(balanced.Even, 0);
        levels[0].BalancedOdd(heat.Odd, temperatures.Even, balanced.Odd);
    }

    private void Cycle(int level, SplitField heat, SplitField into)
    {
        var here = levels[level];
        if (here.Columns == 1)
        {
            here.SolveLast(heat.Even, into.Even);
            return;
        }

        var next = levels[level + 1].Heat;
        here.Descend(heat.Odd, heat.Even, next);
        Cycle(level + 1, next, corrections[level]);
        here.Ascend(heat.Odd, heat.Even, corrections[level], into.Odd, into.Even);
    }
}
