using Microsoft.AspNetCore.Builder;
using System.Net;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.HttpOverrides;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Options;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Tests.Hosting;

public sealed class KnownProxiesTests
{
    [Fact]
    public void Nobody_is_believed_unless_named() => Assert.Null(KnownProxies.Read(new ConfigurationBuilder().Build()));

    [Theory]
    [InlineData("127.0.0.1", "203.0.113.9", "203.0.113.9", "https")] // the proxy speaks
    [InlineData("::ffff:127.0.0.1", "203.0.113.9", "203.0.113.9", "https")] // the same, on a socket for both kinds of addresses
    [InlineData("172.18.0.3", "203.0.113.9", "203.0.113.9", "https")] // one of a named network
    [InlineData("198.51.100.7", "203.0.113.9", "198.51.100.7", "http")] // a stranger makes an address up
    [InlineData("127.0.0.1", "192.0.2.1, 203.0.113.9", "203.0.113.9", "https")] // a stranger makes one up, the proxy adds the true one
    [InlineData("127.0.0.1", "203.0.113.9, 172.18.0.3", "203.0.113.9", "https")] // proxy behind proxy
    public async Task Only_named_proxies_tell_where_a_visitor_comes_from(string from, string told, string address, string scheme)
    {
        ForwardedHeadersOptions options = Read("127.0.0.1", "172.16.0.0/12")!;
        var http = new DefaultHttpContext { Connection = { RemoteIpAddress = IPAddress.Parse(from) }, Request = { Scheme = "http" } };
        http.Request.Headers["X-Forwarded-For"] = told;
        http.Request.Headers["X-Forwarded-Proto"] = string.Join(", ", told.Split(',').Select(_ => "https"));
        await new ForwardedHeadersMiddleware(_ => Task.CompletedTask, NullLoggerFactory.Instance, Options.Create(options)).Invoke(http);

        Assert.Equal((IPAddress.Parse(address), scheme), (http.Connection.RemoteIpAddress, http.Request.Scheme));
    }

    [Fact]
    public void A_misspelt_proxy_stops_the_program() => Assert.Throws<InvalidOperationException>(() => Read("the one in the hall"));

    private static ForwardedHeadersOptions? Read(params string[] named) => KnownProxies.Read(new ConfigurationBuilder()
        .AddInMemoryCollection(named.Select((name, at) => KeyValuePair.Create($"{KnownProxies.Setting}:{at}", (string?)name))).Build());
}
