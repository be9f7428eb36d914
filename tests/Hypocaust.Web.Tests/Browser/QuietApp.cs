namespace Hypocaust.Web.Tests.Browser;

/// <summary>One running program for the tests of a class that look and do not edit.</summary>
public sealed class QuietApp : IAsyncLifetime
{
    internal RunningApp App { get; private set; } = null!;

    public async ValueTask InitializeAsync() => App = await RunningApp.StartAsync();

    public ValueTask DisposeAsync() => App.DisposeAsync();
}
