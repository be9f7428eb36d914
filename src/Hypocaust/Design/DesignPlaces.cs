using Hypocaust.Design.Source;

namespace Hypocaust.Design;

/// <summary>Paths of values in a design, written as the reader writes them.</summary>
internal static class DesignPlaces
{
    public static string Plant(string key) => Place.Root.Member("plant").Member(key).ToString();

    public static string Item(string name, string? key = null) =>
        Below(Place.Root.Member("plant").Member("items").Member(name), key);

    public static string Run(int index, string? key = null) =>
        Below(Place.Root.Member("plant").Member("runs").Item(index), key);

    public static string Loop(int index, string? key = null) =>
        Below(Place.Root.Member("floor").Member("loops").Item(index), key);

    public static string Section(string name, string? key = null) =>
        Below(Place.Root.Member("floor").Member("sections").Member(name), key);

    public static string Zone(string name, string? key = null) =>
        Below(Place.Root.Member("building").Member("zones").Member(name), key);

    public static string Element(string zone, string element) =>
        Place
            .Root.Member("building")
            .Member("zones")
            .Member(zone)
            .Member("elements")
            .Member(element)
            .ToString();

    private static string Below(Place place, string? key) =>
        (key is null ? place : place.Member(key)).ToString();
}
