using System.Net;
using Cavaxis.Quantities.Faults;
using Cavaxis.Web.Host;

namespace Cavaxis.Web.Tests.Host;

public class WorkspaceOptionsTests
{
    [Fact]
    public void Without_options_only_this_machine_reaches_it() =>
        Assert.Equal((IPAddress.Loopback, 0, null), (WorkspaceOptions.Read([]).Bind, WorkspaceOptions.Read([]).Port, WorkspaceOptions.Read([]).HostName));

    [Theory]
    [InlineData("--port", "--port", "port", "70000")]
    [InlineData("--port", "--port", "port")]
    [InlineData("--colour", "--colour")]
    [InlineData("--bind", "--bind", "bind", "anywhere")]
    [InlineData("--bind,--host-name", "--bind", "bind", "0.0.0.0")]
    [InlineData("--host-name", "--behind-proxy")]
    [InlineData("--certificate", "--certificate", "certificate", "a.pem")]
    [InlineData("--base-path", "--base-path", "base-path", "a b")]
    public void What_cannot_be_used_is_named(string fields, params string[] args)
    {
        string[] line = [args[0], .. args.Skip(2)];
        IReadOnlyList<InputFault> faults = Assert.Throws<InputFaultException>(() => WorkspaceOptions.Read(line)).Faults;
        Assert.Equal(fields.Split(','), faults.Select(static f => f.Field));
        Assert.All(faults, static f => Assert.False(string.IsNullOrWhiteSpace(f.Remedy)));
    }

    [Fact]
    public void A_proxy_or_a_certificate_opens_it_to_others_under_one_name()
    {
        WorkspaceOptions proxy = WorkspaceOptions.Read(["--bind", "0.0.0.0", "--behind-proxy", "--host-name", "plan.example", "--base-path", "/cavaxis/"]);
        Assert.Equal((true, "plan.example", "/cavaxis"), (proxy.BehindProxy, proxy.HostName, proxy.BasePath));
        WorkspaceOptions tls = WorkspaceOptions.Read(["--bind", "::", "--certificate", "a.pem", "--key", "b.pem", "--host-name", "plan.example"]);
        Assert.Equal(("a.pem", "b.pem"), (tls.Certificate, tls.Key));
    }
}
