using Cavaxis.Web.Desk;
using Cavaxis.Web.Pages.Lie;
using Cavaxis.Web.Pages.Ways;
using Cavaxis.Web.Record;
using Cavaxis.Web.Shelf;
using Cavaxis.Web.SignIn;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.HttpOverrides;

namespace Cavaxis.Web.Host;

/// <summary>Puts the workspace together: services, security of the answers, pages, files.</summary>
public static class WorkspaceHost
{
    /// <summary>A case of the largest size, and what is said around it.</summary>
    private const int LargestMessageBytes = CaseSummary.LargestBytes + (256 * 1024);

    /// <summary>Threads that stand ready for pages beside those that compute.</summary>
    private const int ReadyThreads = 24;

    /// <summary>Builds the server; nothing listens yet.</summary>
    /// <typeparam name="TRoot">The outermost component.</typeparam>
    /// <param name="options">How it is to be started.</param>
    /// <param name="record">The record that it keeps.</param>
    /// <returns>The server.</returns>
    public static WebApplication Build<TRoot>(WorkspaceOptions options, WorkspaceRecord record)
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(record);

        // Studies keep as many threads busy as there are cores; pages must not wait until the pool notices and adds one.
        ThreadPool.GetMinThreads(out int workers, out int ports);
        ThreadPool.SetMinThreads(Math.Max(workers, ReadyThreads), ports);
        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(WorkspaceHost).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
            WebRootPath = "wwwroot",
        });
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Listen(options.Bind, options.Port, listen =>
            {
                if (options.Certificate is string certificate)
                {
                    listen.UseHttps(System.Security.Cryptography.X509Certificates.X509Certificate2.CreateFromPemFile(certificate, options.Key));
                }
            });
        });
        builder.Logging.ClearProviders().AddSimpleConsole(console => console.SingleLine = true).SetMinimumLevel(LogLevel.Warning);
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        IServiceCollection services = builder.Services;
        services.AddSingleton(options);
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton(record);
        services.AddScoped<PersonHere>();
        services.AddScoped<IPersonHere>(static given => given.GetRequiredService<PersonHere>());
        services.AddScoped<ICaseShelf, RecordCaseShelf>();
        services.AddAuthentication(SessionScheme.Name).AddScheme<AuthenticationSchemeOptions, SessionScheme>(SessionScheme.Name, null);
        services.AddRateLimiter(SignInLimit.Configure);
        services.AddSingleton<PlanRunner>();
        services.AddSingleton<Pages.WhatIf.ICirculationSource, Pages.WhatIf.CirculationSource>();
        services.AddSingleton<Pages.GoesIn.IInsertionSource, Pages.GoesIn.InsertionSource>();
        services.AddSingleton<Pages.Blood.IBloodSource, Pages.Blood.BloodSource>();
        services.AddScoped<PatientDesk>();
        services.AddScoped<CourseDesk>();
        services.AddScoped<PlacesKept>();
        services.AddScoped<WaysKept>();
        services.AddSingleton<Downloads.FileTray>();
        services.AddSingleton<Pages.Share.SealTurn>();
        services.AddImages(options, record);
        services.AddRazorComponents().AddInteractiveServerComponents(circuit => circuit.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(10))
            .AddHubOptions(hub => hub.MaximumReceiveMessageSize = LargestMessageBytes);
        services.AddDataProtection().SetApplicationName("cavaxis").PersistKeysToFileSystem(new DirectoryInfo(Path.Combine(options.Data, "keys")));
        services.Configure<HostFilteringOptions>(filter => filter.AllowedHosts =
            options.HostName is string name ? [name, "localhost", "127.0.0.1", "[::1]"] : ["localhost", "127.0.0.1", "[::1]"]);
        if (options.BehindProxy)
        {
            services.Configure<ForwardedHeadersOptions>(forwarded =>
            {
                forwarded.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto | ForwardedHeaders.XForwardedHost;
                forwarded.AllowedHosts = [options.HostName!];
            });
        }

        WebApplication app = builder.Build();
        if (options.BehindProxy)
        {
            app.UseForwardedHeaders();
        }

        app.UseHostFiltering();
        if (options.BasePath.Length > 0)
        {
            app.UsePathBase(options.BasePath);
        }

        // Said here, or routes would be looked for before the path is taken off, and the page's socket would not be found.
        app.UseRouting();
        app.Use(SecurityHeaders.AddAsync);
        app.UseRateLimiter();
        app.UseAuthentication();
        app.Use(SignInGate.PassAsync);
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapSignIn();
        app.MapReports();
        app.MapMade();
        app.MapSheets();
        app.MapRazorComponents<TRoot>().AddInteractiveServerRenderMode(server => server.ContentSecurityFrameAncestorsPolicy = null);
        return app;
    }
}
