using System.Globalization;
using System.Net;
using Cavaxis.Bedside.Stores;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Web.Host;

/// <summary>How the workspace is to be started.</summary>
public sealed record WorkspaceOptions
{
    /// <summary>Words for <c>--help</c>.</summary>
    public const string Help = """
        ./run [workspace] [--port N] [--data DIR] [--store ADDRESS] [--no-open]
              [--bind ADDRESS (--certificate FILE.pem --key FILE.pem | --behind-proxy) --host-name NAME [--base-path /PATH]]

          --port N          port on this machine; a free one is taken when left out
          --data DIR        folder of the store; $XDG_DATA_HOME/cavaxis when left out
          --store ADDRESS   where the record is kept: a file, or "Host=...;Database=...;Username=...;Password=..." for PostgreSQL; a file in --data when left out
          --no-open         do not open a browser
          --bind ADDRESS    listen on another address than this machine's own; needs a certificate or --behind-proxy
          --certificate F   certificate chain, PEM; with --key F, its key, PEM
          --behind-proxy    a reverse proxy on this machine ends TLS and sends X-Forwarded-For, -Proto and -Host
          --host-name NAME  name that people type in the browser; others are refused
          --base-path /P    path under which the proxy shows the workspace

        Without --bind nothing but this machine reaches it. Beyond this machine people must be registered first, so that each signs in:
        ./run record create, then ./run people add. See docs/workspace.md.
        """;

    /// <summary>Port; 0 for a free one.</summary>
    public int Port { get; init; }

    /// <summary>Folder of the store.</summary>
    public string Data { get; init; } = RecordPlace.DataFolder;

    /// <summary>Whether to open a browser.</summary>
    public bool Open { get; init; } = true;

    /// <summary>Address to listen on.</summary>
    public IPAddress Bind { get; init; } = IPAddress.Loopback;

    /// <summary>Path of the certificate chain; null without TLS.</summary>
    public string? Certificate { get; init; }

    /// <summary>Path of its key.</summary>
    public string? Key { get; init; }

    /// <summary>Whether a reverse proxy stands before it.</summary>
    public bool BehindProxy { get; init; }

    /// <summary>Name under which people reach it; null on this machine alone.</summary>
    public string? HostName { get; init; }

    /// <summary>Path under which it is shown; empty for the root.</summary>
    public string BasePath { get; init; } = string.Empty;

    /// <summary>True when only the words of help are asked for.</summary>
    public bool HelpOnly { get; init; }

    /// <summary>Where the record is kept, as it was given; null for a file in <see cref="Data"/>.</summary>
    public string? Store { get; init; }

    /// <summary>Where the record is kept.</summary>
    public string RecordStore => Store ?? Path.Combine(Data, RecordPlace.FileName);

    /// <summary>Path of the file in which earlier versions of this program kept cases.</summary>
    public string OldStorePath => Path.Combine(Data, "cases.sqlite");

    /// <summary>True where others than this machine's own person may reach it.</summary>
    public bool IsReachable => BehindProxy || !IPAddress.IsLoopback(Bind);

    /// <summary>Reads the command line.</summary>
    /// <param name="args">Arguments after <c>workspace</c>.</param>
    /// <returns>The options.</returns>
    /// <exception cref="InputFaultException">Every option that cannot be used.</exception>
    public static WorkspaceOptions Read(IReadOnlyList<string> args)
    {
        ArgumentNullException.ThrowIfNull(args);
        List<InputFault> faults = [];
        WorkspaceOptions options = new();
        for (int i = 0; i < args.Count; i++)
        {
            string name = args[i];
            options = name switch
            {
                "--help" or "-h" => options with { HelpOnly = true },
                "--no-open" => options with { Open = false },
                "--behind-proxy" => options with { BehindProxy = true },
                "--port" => options with { Port = PortOf(Value(args, ref i, faults), faults) },
                "--data" => options with { Data = Value(args, ref i, faults) },
                "--store" => options with { Store = Value(args, ref i, faults) },
                "--bind" => options with { Bind = AddressOf(Value(args, ref i, faults), faults) },
                "--certificate" => options with { Certificate = Value(args, ref i, faults) },
                "--key" => options with { Key = Value(args, ref i, faults) },
                "--host-name" => options with { HostName = Value(args, ref i, faults) },
                "--base-path" => options with { BasePath = BasePathOf(Value(args, ref i, faults), faults) },
                _ => Unknown(options, name, faults),
            };
        }

        if (faults.Count == 0 && !options.HelpOnly)
        {
            options.CheckReach(faults);
        }

        return faults.Count == 0 ? options : throw new InputFaultException(faults);
    }

    private void CheckReach(List<InputFault> faults)
    {
        if ((Certificate is null) != (Key is null))
        {
            faults.Add(Fault("--certificate", "one without the other", "--certificate and --key together", "Give both files, or neither."));
        }

        bool beyond = !IPAddress.IsLoopback(Bind);
        if (beyond && Certificate is null && !BehindProxy)
        {
            faults.Add(Fault("--bind", Bind.ToString(), "this machine alone, unless TLS is set up", "Give --certificate and --key, or --behind-proxy where a proxy ends TLS."));
        }

        if ((beyond || BehindProxy) && string.IsNullOrEmpty(HostName))
        {
            faults.Add(Fault("--host-name", "(nothing)", "the name that people type in the browser", "Give it, so that requests under other names are refused."));
        }
    }

    private static string Value(IReadOnlyList<string> args, ref int i, List<InputFault> faults)
    {
        if (i + 1 < args.Count && args[i + 1].Length > 0)
        {
            return args[++i];
        }

        faults.Add(Fault(args[i], "(nothing)", "a value after the option", "Write it after a blank."));
        return string.Empty;
    }

    private static int PortOf(string text, List<InputFault> faults)
    {
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int port) && port is >= 0 and <= 65535)
        {
            return port;
        }

        AddUnlessMissing("--port", text, "a whole number from 0 to 65535", "Leave it out for a free port.", faults);
        return 0;
    }

    private static IPAddress AddressOf(string text, List<InputFault> faults)
    {
        if (IPAddress.TryParse(text, out IPAddress? address))
        {
            return address;
        }

        AddUnlessMissing("--bind", text, "an IP address of this machine, such as 192.0.2.5 or 0.0.0.0", "Leave it out for this machine alone.", faults);
        return IPAddress.Loopback;
    }

    private static string BasePathOf(string text, List<InputFault> faults)
    {
        string path = text.TrimEnd('/');
        if (path.Length == 0 || (path[0] == '/' && path.All(static c => char.IsAsciiLetterOrDigit(c) || c is '/' or '-' or '_')))
        {
            return path;
        }

        AddUnlessMissing("--base-path", text, "a path such as /cavaxis", "Begin with a slash; letters, digits, hyphens.", faults);
        return string.Empty;
    }

    private static WorkspaceOptions Unknown(WorkspaceOptions options, string name, List<InputFault> faults)
    {
        faults.Add(Fault(name.Length == 0 ? "command line" : InputFault.Shown(name), "no option of the workspace", "an option of `./run workspace --help`", "Check the spelling."));
        return options;
    }

    private static void AddUnlessMissing(string option, string text, string accepted, string remedy, List<InputFault> faults)
    {
        if (text.Length > 0)
        {
            faults.Add(Fault(option, InputFault.Shown(text), accepted, remedy));
        }
    }

    private static InputFault Fault(string field, string value, string accepted, string remedy) => new(FaultCode.BadOption, field, value, accepted, remedy);
}
