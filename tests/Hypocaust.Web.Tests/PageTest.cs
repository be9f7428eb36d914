using AngleSharp.Dom;
using Bunit;
using Hypocaust.Web.Session;
using Hypocaust.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Hypocaust.Web.Tests;

/// <summary>Renders a page on its desk, with a session of its own.</summary>
public abstract class PageTest : BunitContext
{
    protected PageTest()
    {
        Services.AddSingleton(_ => Designs.Session());
        JSInterop.Mode = JSRuntimeMode.Loose;
        SetRendererInfo(new RendererInfo("Server", isInteractive: true));
    }

    /// <summary>The session behind the page.</summary>
    public DesignSession Session => Services.GetRequiredService<DesignSession>();

    /// <summary>The page with everything around it.</summary>
    public IRenderedComponent<MainLayout> Desk<TPage>(string address = "/")
        where TPage : IComponent
    {
        Services.GetRequiredService<NavigationManager>().NavigateTo(address);
        return Render<MainLayout>(desk =>
            desk.Add(
                layout => layout.Body,
                body =>
                {
                    body.OpenComponent<TPage>(0);
                    body.CloseComponent();
                }
            )
        );
    }

    /// <summary>The input or select of a labelled field among the inputs that matter most.</summary>
    public static IElement Labelled(IRenderedComponent<MainLayout> desk, string label) =>
        desk.FindAll(".entries label")
            .Where(found => found.TextContent.Trim().StartsWith(label, StringComparison.Ordinal))
            .Select(found => desk.Find("#" + found.GetAttribute("for")))
            .First();
}
