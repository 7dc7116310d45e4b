using PatternStudio.Studio;
using PatternStudio.Web.Hosting;

WebApplicationBuilder builder = WebApplication.CreateBuilder(HomeFolder.Options(args));
// Styles, scripts and fonts are found when the program starts from a build folder as well as when published.
builder.WebHost.UseStaticWebAssets();
builder.Services.AddStudio(builder.Configuration, builder.Environment.ContentRootPath);
builder.Services.AddSignIn();
builder.Services.AddPages();

WebApplication app = builder.Build();
app.UsePages();
await app.Services.MigrateStudioAsync();
app.Lifetime.ApplicationStarted.Register(() => Greeting.Print(app));
await app.RunAsync();

/// <summary>The program; public so that browser tests can start it.</summary>
public partial class Program;
