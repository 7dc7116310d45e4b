using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;
using Microsoft.AspNetCore.Components.Web;

namespace PatternStudio.Web.Shell;

/// <summary>The document around every page. Account pages are plain forms; all others are live.</summary>
public sealed partial class App
{
    /// <summary>Nothing is rendered ahead: the desk would read its design twice.</summary>
    private static readonly IComponentRenderMode Live = new InteractiveServerRenderMode(prerender: false);

    [CascadingParameter]
    private HttpContext Http { get; set; } = null!;

    private IComponentRenderMode? Mode => Http.AcceptsInteractiveRouting() ? Live : null;

    private bool Dark => Http.Request.Cookies["scheme"] == "dark";
}
