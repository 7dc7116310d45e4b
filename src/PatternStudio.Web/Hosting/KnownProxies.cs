using System.Net;
using Microsoft.AspNetCore.HttpOverrides;

namespace PatternStudio.Web.Hosting;

/// <summary>
/// Proxies that the studio stands behind, named in the configuration. Only what they say of a visitor's address and scheme is believed;
/// with none named nobody is, so that a stranger can't slip past the limits by making an address up.
/// </summary>
/// <remarks>Proxy:Known takes addresses and networks: '127.0.0.1', '::1', '172.16.0.0/12'. See docs/proxy.md.</remarks>
internal static class KnownProxies
{
    public const string Setting = "Proxy:Known";

    /// <summary>Must come first: what follows sees the visitor's address in place of the proxy's.</summary>
    public static void UseKnownProxies(this WebApplication app)
    {
        if (Read(app.Configuration) is { } options) app.UseForwardedHeaders(options);
    }

    /// <summary>Null where no proxy is named.</summary>
    /// <exception cref="InvalidOperationException">Something named is neither an address nor a network: the program must not start half protected.</exception>
    public static ForwardedHeadersOptions? Read(IConfiguration configuration)
    {
        string[] named = configuration.GetSection(Setting).Get<string[]>() ?? [];
        if (named.Length == 0) return null;
        var options = new ForwardedHeadersOptions
        {
            ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto,
            ForwardLimit = null, // proxy behind proxy: the way back ends at the first address that is not named
        };
        options.KnownProxies.Clear();
        options.KnownIPNetworks.Clear();
        foreach (string name in named)
            if (IPAddress.TryParse(name, out IPAddress? address)) options.KnownProxies.Add(address);
            else if (System.Net.IPNetwork.TryParse(name, out System.Net.IPNetwork network)) options.KnownIPNetworks.Add(network);
            else throw new InvalidOperationException($"{Setting}: '{name}' is no address and no network. Write '127.0.0.1' or '172.16.0.0/12'.");
        return options;
    }
}
