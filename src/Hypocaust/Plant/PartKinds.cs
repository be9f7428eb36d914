using Hypocaust.Design;

namespace Hypocaust.Plant;

/// <summary>What a part is, in one word of the trade.</summary>
public static class PartKinds
{
    /// <summary>The word, for example <c>circulator</c>, <c>check valve</c>.</summary>
    public static string NameOf(Part part) =>
        part switch
        {
            HeaterPart => "heater",
            CirculatorPart => "circulator",
            InlinePart inline => inline.Function switch
            {
                InlineFunction.ShutOff => "shut-off valve",
                InlineFunction.Check => "check valve",
                InlineFunction.Strainer => "strainer",
                InlineFunction.AirSeparator => "air separator",
                InlineFunction.DirtSeparator => "dirt separator",
                InlineFunction.FlowMeter => "flow meter",
                InlineFunction.FlowSwitch => "flow switch",
                InlineFunction.Purge => "purge valve",
                _ => "part in the pipe",
            },
            ReliefPart => "relief valve",
            VesselPart => "expansion vessel",
            TappingPart tapping => tapping.Function switch
            {
                TappingFunction.Thermometer => "thermometer",
                TappingFunction.Gauge => "pressure gauge",
                TappingFunction.AirVent => "air vent",
                TappingFunction.Fill => "fill valve",
                TappingFunction.Drain => "drain valve",
                _ => "part on a tee",
            },
            TeePart => "tee",
            CloselySpacedTeesPart => "closely spaced tees",
            ManifoldPart => "manifold",
            PipePart => "pipe",
            _ => "part",
        };
}
