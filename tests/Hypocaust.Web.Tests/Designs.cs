using Hypocaust.Building;
using Hypocaust.Design;
using Hypocaust.Web.Session;

namespace Hypocaust.Web.Tests;

/// <summary>Designs and sessions for these tests, all from the design with which <c>hypocaust new</c> starts.</summary>
internal static class Designs
{
    public const string SetPoint = "$.plant.items.heater.setPoint";

    public static DesignDocument Small { get; } = DesignFile.Read(DesignFile.New("Shed")).Value;

    public static DesignSession Session(EditJournal? journal = null, DesignPlace? place = null) =>
        new(Small, "shed.hypocaust.json", place, journal, TimeProvider.System);

    public static DesignEdit Edit(string path, string text) => new(path, text, $"{path} → {text}");

    public static string? Written(this DesignSession session, string path) =>
        session.View.Present.Document.Written(path);
}

/// <summary>A folder of its own that goes with the test.</summary>
internal sealed class Folder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("hypocaust").FullName;

    public string File(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
