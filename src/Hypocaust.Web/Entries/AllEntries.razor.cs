using System.Collections.Immutable;
using Hypocaust.Web.Session;
using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Entries;

/// <summary>Every value of some sections of the design, folded away.</summary>
public partial class AllEntries
{
    /// <summary>Sections of the design, by name.</summary>
    [Parameter, EditorRequired]
    public required ImmutableArray<string> Sections { get; set; }

    /// <summary>Path of the value that is wanted, from the address: <c>/plant?field=$.plant.fluid.share</c>.</summary>
    [SupplyParameterFromQuery(Name = "field")]
    public string? Wanted { get; set; }

    [CascadingParameter]
    private Moment Moment { get; set; } = null!;

    private IEnumerable<FieldGroup> Groups =>
        Sections.Select(name => Moment.Fields.Section(name)).OfType<FieldGroup>();
}
