using Bunit;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;
using PatternStudio.Web.Features.Designs;
using PatternStudio.Web.Features.Designs.Exchange;

namespace PatternStudio.Web.Tests.Designs;

/// <summary>The list of all designs.</summary>
public sealed class DesignsPageTests : StudioPageTest
{
    public DesignsPageTests()
    {
        Services.AddMudServices();
        Services.AddSingleton<ExportTickets>();
    }

    [Fact]
    public async Task What_is_typed_while_the_list_is_still_coming_is_searched_for()
    {
        foreach (string title in (string[])["Eelgrass cowl", "Jetty mat"]) await Desk.CreateAsync(Caller, title, "Ch 12.");
        BunitJSModuleInterop script = JSInterop.SetupModule(call => call.Arguments[0] is string path && path.Contains("shelf.js", StringComparison.Ordinal));
        script.Mode = JSRuntimeMode.Loose;
        JSRuntimeInvocationHandler<string?> view = script.Setup<string?>("view");
        IRenderedComponent<DesignsPage> page = Render<DesignsPage>();

        page.Find("input[type=search]").Input("eelgrass");
        view.SetResult(null);

        page.WaitForAssertion(() => Assert.Equal("Eelgrass cowl", Assert.Single(page.FindAll(".design-card h2")).TextContent.Trim()));
        Assert.Equal("eelgrass", page.Find("input[type=search]").GetAttribute("value"));
    }
}
