using System.Net;
using System.Security.Cryptography.X509Certificates;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Yarp.ReverseProxy.Configuration;
using Yarp.ReverseProxy.Transforms;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>A reverse proxy that ends TLS and hands one path on to the workspace, as docs/workspace.md tells to set one up.</summary>
internal sealed class ProxyInFront : IAsyncDisposable
{
    private readonly WebApplication proxy;

    private ProxyInFront(WebApplication proxy, Uri address) => (this.proxy, Address) = (proxy, address);

    /// <summary>Where people reach it.</summary>
    public Uri Address { get; }

    /// <summary>Starts it on a free port.</summary>
    /// <param name="to">The workspace behind it.</param>
    /// <param name="path">Path that is handed on, such as /cavaxis.</param>
    /// <param name="certificate">Path of the certificate, PEM.</param>
    /// <param name="key">Path of its key, PEM.</param>
    public static async Task<ProxyInFront> StartAsync(Uri to, string path, string certificate, string key)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        using X509Certificate2 pem = X509Certificate2.CreateFromPemFile(certificate, key);
        X509Certificate2 own = X509CertificateLoader.LoadPkcs12(pem.Export(X509ContentType.Pkcs12), null);
        builder.WebHost.UseKestrelHttpsConfiguration();
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0, listen => listen.UseHttps(own)));
        builder.Services.AddReverseProxy()
            .LoadFromMemory(
                [new RouteConfig { RouteId = "workspace", ClusterId = "workspace", Match = new RouteMatch { Path = path + "/{**rest}" } }],
                [new ClusterConfig { ClusterId = "workspace", Destinations = new Dictionary<string, DestinationConfig> { ["own"] = new() { Address = to.GetLeftPart(UriPartial.Authority) } } }])
            .AddTransforms(static transforms => transforms.AddXForwarded().AddOriginalHost());
        WebApplication proxy = builder.Build();
        proxy.MapReverseProxy();
        await proxy.StartAsync();
        Uri address = new(proxy.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());
        return new ProxyInFront(proxy, address);
    }

    public async ValueTask DisposeAsync() => await proxy.DisposeAsync();
}
