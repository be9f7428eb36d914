using System.Collections.Immutable;
using System.Text;
using Hypocaust.Design;
using Hypocaust.Papers.Drawing;
using Hypocaust.Problems;
using Hypocaust.Web.Server;
using Hypocaust.Web.Session;
using Hypocaust.Web.Shell;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Hypocaust.Web;

/// <summary>The web app: one design, open on this machine only.</summary>
public static class HypocaustWeb
{
    /// <summary>Opens the design and serves it until cancelled.</summary>
    /// <param name="options">What to open and where to listen.</param>
    /// <param name="output">Where the address is printed.</param>
    /// <param name="cancellationToken">Ends the app; so does Ctrl+C.</param>
    /// <returns>Why it could not start; empty after an ordinary end.</returns>
    public static async Task<ImmutableArray<Problem>> Start(
        WebOptions options,
        TextWriter output,
        CancellationToken cancellationToken
    )
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(output);
        var built = BuildApp(options);
        if (!built.TryGet(out var app))
        {
            return built.Problems;
        }

        await using (app)
        {
            try
            {
                await app.StartAsync(cancellationToken);
            }
            catch (IOException)
            {
                return [WebProblems.PortTaken(options.Port)];
            }

            var address = app.Urls.First();
            await output.WriteLineAsync($"Hypocaust is open at {address}");
            await output.FlushAsync(cancellationToken);
            if (options.OpensBrowser && Browser.HasDesktop)
            {
                Browser.TryOpen(address);
            }

            await ((IHost)app).WaitForShutdownAsync(cancellationToken);
        }

        return [];
    }

    /// <summary>Reads the design and builds the app, not yet listening.</summary>
    /// <returns>The app, or every problem of the design file.</returns>
    public static Result<WebApplication> BuildApp(WebOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        return SessionStart.Open(options).Then<WebApplication>(session => Build(options, session));
    }

    private static WebApplication Build(WebOptions options, DesignSession session)
    {
        // Beside the executable: css and script are found there from whatever folder it is started
        var builder = WebApplication.CreateBuilder(
            new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory }
        );
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.UseUrls(FormattableString.Invariant($"http://127.0.0.1:{options.Port}"));
        builder.Logging.ClearProviders();
        builder.Logging.AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace);
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        // A page of an earlier run shows a token that this run cannot read; a new one is made, and nobody needs to hear of it
        builder.Logging.AddFilter("Microsoft.AspNetCore.Antiforgery", LogLevel.None);
        builder.Services.AddOwnNames();
        builder.Services.AddSingleton(_ => session);
        // Keys that live as long as the program: nothing is left on the disk
        builder
            .Services.AddDataProtection()
            .UseEphemeralDataProtectionProvider()
            .DisableAutomaticKeyGeneration();
        builder
            .Services.AddRazorComponents()
            .AddInteractiveServerComponents(server => server.DisconnectedCircuitMaxRetained = 4);
        var app = builder.Build();
        app.UseOwnPagesOnly();
        app.UseStatusCodePagesWithReExecute("/not-found");
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapGet("/", () => Results.Redirect(Questions.Space.Address));
        app.MapGet("/design/download", Download);
        app.MapGet("/sheet.css", () => Results.Text(SheetStyle.Css, "text/css", Encoding.UTF8));
        app.MapRazorComponents<App>()
            // the header of OwnPagesOnly says it for every answer, not for pages alone
            .AddInteractiveServerRenderMode(server =>
                server.ContentSecurityFrameAncestorsPolicy = null
            );
        return app;
    }

    private static IResult Download(DesignSession session)
    {
        var view = session.View;
        return Results.File(
            Encoding.UTF8.GetBytes(view.Present.Document.Text),
            "application/json",
            view.FileName
        );
    }
}
