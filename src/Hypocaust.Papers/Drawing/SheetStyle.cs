namespace Hypocaust.Papers.Drawing;

/// <summary>The look of the drawings.</summary>
public static class SheetStyle
{
    /// <summary>Style rules for a page or a file. Everything lies under <c>.sheet</c>; the colours follow the page's custom properties
    /// <c>--ink --soft --hair --sheet --copper --sans --mono --serif</c> where it has them, and its light or dark ground otherwise.</summary>
    public const string Css = """
        .sheet{--i:var(--ink,#23272b);--s:var(--soft,#5b5f5e);--h:var(--hair,#cfc6b3);--g:var(--sheet,#fdfaf3);--c:var(--copper,#96491f);color:var(--i)}
        @media(prefers-color-scheme:dark){.sheet{--i:var(--ink,#ece6d8);--s:var(--soft,#b3b0a6);--h:var(--hair,#4a4d4c);--g:var(--sheet,#23272a);--c:var(--copper,#e39a6b)}}
        .sheet .ground{fill:var(--g)}
        .sheet text{fill:var(--i)}
        .sheet .num{font:600 13px var(--mono,"Liberation Mono",ui-monospace,monospace)}
        .sheet .name{font:12.5px var(--sans,"Liberation Sans",system-ui,sans-serif)}
        .sheet .lab{font:12px var(--sans,"Liberation Sans",system-ui,sans-serif);fill:var(--s)}
        .sheet .head{font:14px var(--serif,"Liberation Serif",Georgia,serif)}
        .sheet .thin,.sheet .body,.sheet .hair,.sheet .case,.sheet .plain,.sheet .water,.sheet .still,.sheet .flow,.sheet .curve,.sheet .mark,.sheet .bar{fill:none;stroke-linejoin:round}
        .sheet .thin{stroke:var(--i);stroke-width:1.2}
        .sheet .hair{stroke:var(--h);stroke-width:1}
        .sheet .body{fill:var(--g);stroke:var(--i);stroke-width:1.6}
        .sheet .solid{fill:var(--i)}
        .sheet .case{stroke:var(--i);stroke-width:5.4}
        .sheet .plain{stroke:var(--i);stroke-width:3}
        .sheet .water{stroke-width:3}
        .sheet .case.fine{stroke-width:4}
        .sheet .water.fine{stroke-width:2}
        .sheet .bar{stroke:var(--i);stroke-width:8;stroke-linecap:round}
        .sheet .return{stroke-dasharray:9 4}
        .sheet .gap{fill:none;stroke:var(--g);stroke-width:10}
        .sheet .still{stroke:var(--s);stroke-width:1.4}
        .sheet .still.return{stroke-dasharray:5 4}
        .sheet .outline{fill:none;stroke:var(--i);stroke-width:3.4;stroke-linejoin:round;stroke-linecap:round}
        .sheet .speck{fill:var(--s)}
        .sheet .curve{stroke:var(--i);stroke-width:2}
        .sheet .curve.fine{stroke-width:1.3}
        .sheet .dash{stroke-dasharray:6 4}
        .sheet .mark{stroke:var(--c);stroke-width:1.6}
        .sheet .heat{fill:var(--c)}
        .sheet .wash{fill:var(--c);opacity:.16}
        .sheet .flow{stroke:var(--g);stroke-width:2;stroke-dasharray:1 17;stroke-linecap:round;animation:sheet-flow 1.4s linear infinite}
        .sheet .arrow{fill:var(--i);stroke:var(--g);stroke-width:1}
        .sheet .hatch{stroke:var(--s);stroke-width:.8;fill:none}
        .sheet [data-item]{cursor:pointer}
        .sheet .hit{fill:transparent}
        .sheet a:focus-visible,.sheet [data-item]:focus-visible{outline:3px solid var(--focus,#1d4e89)}
        @keyframes sheet-flow{to{stroke-dashoffset:-18}}
        @media(prefers-reduced-motion:reduce){.sheet .flow{animation:none}}
        @media print{.sheet .flow{animation:none}}
        """;

    /// <summary>The rules for a file of its own: light ground, every colour and font written out, for viewers that know no custom properties.</summary>
    internal static string StandAloneCss { get; } = WriteOut(Css);

    private static string WriteOut(string css)
    {
        (string Variable, string Value)[] values =
        [
            ("var(--i)", "#23272b"),
            ("var(--s)", "#5b5f5e"),
            ("var(--h)", "#cfc6b3"),
            ("var(--g)", "#fdfaf3"),
            ("var(--c)", "#96491f"),
            ("var(--focus,#1d4e89)", "#1d4e89"),
            (
                "var(--mono,\"Liberation Mono\",ui-monospace,monospace)",
                "\"Liberation Mono\",monospace"
            ),
            (
                "var(--sans,\"Liberation Sans\",system-ui,sans-serif)",
                "\"Liberation Sans\",sans-serif"
            ),
            ("var(--serif,\"Liberation Serif\",Georgia,serif)", "\"Liberation Serif\",serif"),
        ];
        var rules = css.ReplaceLineEndings("\n")
            .Split('\n')
            .Where(line => !line.Contains("{--i:", StringComparison.Ordinal));
        return values.Aggregate(
            string.Join('\n', rules),
            (text, one) => text.Replace(one.Variable, one.Value, StringComparison.Ordinal)
        );
    }
}
