using Cavaxis.Quantities.Faults;
using Cavaxis.Web;
using Cavaxis.Web.Host;
using Cavaxis.Web.Record;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

const int Done = 0;
const int InputError = 2;
const int InternalError = 3;
try
{
    WorkspaceOptions options = WorkspaceOptions.Read(args);
    if (options.HelpOnly)
    {
        Console.WriteLine(WorkspaceOptions.Help);
        return Done;
    }

    using WorkspaceRecord record = await RecordFault.InAsync(() => WorkspaceStart.OpenAsync(options));
    await using WebApplication app = WorkspaceHost.Build<App>(options, record);
    await app.StartAsync();
    string address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First() + options.BasePath;
    Console.WriteLine($"Workspace: {address}");
    Console.WriteLine($"The record is kept in {Cavaxis.Records.Engines.StoreAddress.Of(options.RecordStore).Shown}. Stop with Ctrl+C.");
    if (options.Open)
    {
        Browser.Open(address);
    }

    await app.WaitForShutdownAsync();
    return Done;
}
catch (InputFaultException fault)
{
    foreach (InputFault one in fault.Faults)
    {
        Console.Error.WriteLine(one);
    }

    return InputError;
}
catch (IOException failure)
{
    // The port is taken, or the address is not this machine's.
    Console.Error.WriteLine($"The workspace cannot listen: {failure.Message} Choose another --port or --bind.");
    return InputError;
}
#pragma warning disable CA1031 // The last line of defence: whatever else fails becomes exit code 3 in words, never a stack trace.
catch (Exception failure)
#pragma warning restore CA1031
{
    Console.Error.WriteLine($"The workspace failed: {failure.Message}");
    return InternalError;
}
