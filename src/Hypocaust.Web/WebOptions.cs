namespace Hypocaust.Web;

/// <summary>How the web app is started.</summary>
public sealed record WebOptions
{
    /// <summary>The design file to open; null opens <see cref="DemoFile"/> as a working copy.</summary>
    public string? File { get; init; }

    /// <summary>The design to open where no file is given; the person's edits never touch it.</summary>
    public required string DemoFile { get; init; }

    /// <summary>Port on this machine, 1 to 65535; 0 takes a free one.</summary>
    public int Port { get; init; }

    /// <summary>Whether to show the page in the person's browser, where there is a desktop.</summary>
    public bool OpensBrowser { get; init; } = true;

    /// <summary>Folder for the journal of a working copy that has no file of its own.</summary>
    public string DataFolder { get; init; } =
        Path.Combine(
            Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData),
            "hypocaust"
        );

    /// <summary>The clock.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;
}
