using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Hypocaust.Web.Server;

/// <summary>Lets only pages of this app, asked for under this machine's own name, talk to it, and tells the browser to load nothing from elsewhere.</summary>
internal static class OwnPagesOnly
{
    // Blazor's script talks to this host alone; drawings are inline SVG; the icon is a data: address
    private const string ContentSecurityPolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; "
        + "connect-src 'self'; font-src 'self'; form-action 'self'; base-uri 'self'; frame-ancestors 'none'";

    private static readonly string[] OwnNames = ["localhost", "127.0.0.1", "[::1]"];

    /// <summary>A name that leads here from outside (DNS rebinding) is refused before anything else looks at the request.</summary>
    public static void AddOwnNames(this IServiceCollection services) =>
        services.Configure<HostFilteringOptions>(options =>
        {
            options.AllowedHosts = OwnNames;
            options.AllowEmptyHosts = false;
        });

    /// <summary>Checks host and origin, and writes the security headers.</summary>
    public static void UseOwnPagesOnly(this IApplicationBuilder app)
    {
        app.UseHostFiltering();
        app.Use(
            (context, next) =>
            {
                WriteHeaders(context.Response.Headers);
                if (IsOwnOrigin(context.Request))
                {
                    return next(context);
                }

                context.Response.StatusCode = StatusCodes.Status403Forbidden;
                return Task.CompletedTask;
            }
        );
    }

    // A page of another site can open a WebSocket to us: the browser names that site as the origin
    private static bool IsOwnOrigin(HttpRequest request)
    {
        var origin = request.Headers.Origin.ToString();
        return origin.Length == 0
            || string.Equals(
                origin,
                $"{request.Scheme}://{request.Host}",
                StringComparison.OrdinalIgnoreCase
            );
    }

    private static void WriteHeaders(IHeaderDictionary headers)
    {
        headers.ContentSecurityPolicy = ContentSecurityPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
    }
}
