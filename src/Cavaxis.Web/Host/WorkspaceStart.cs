using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Faults;
using Cavaxis.Web.Record;

namespace Cavaxis.Web.Host;

/// <summary>Opens the record at a start: makes its folder, moves the cases of the earlier store, loads the invented ones, and refuses to be reached where no one signs in.</summary>
public static class WorkspaceStart
{
    /// <summary>Opens it.</summary>
    /// <param name="options">How the workspace is to be started.</param>
    /// <returns>The record.</returns>
    /// <exception cref="InputFaultException">The folder cannot be made, the workspace would be reached by people who do not sign in, or the earlier store cannot be moved.</exception>
    /// <exception cref="StoreFaultException">The record cannot be opened or written.</exception>
    public static async Task<WorkspaceRecord> OpenAsync(WorkspaceOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        try
        {
            Directory.CreateDirectory(options.Data);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.UnreadableFile, "--data", InputFault.Shown(options.Data), "a folder you may write to", "Choose another folder with --data."));
        }

        WorkspaceRecord record = await WorkspaceRecord.OpenAsync(StoreAddress.Of(options.RecordStore), TimeProvider.System);
        try
        {
            if (options.IsReachable && !await record.AsksWhoAsync())
            {
                throw new InputFaultException(new InputFault(
                    FaultCode.Contradiction, "--bind", "a workspace that others reach, and nobody is registered", "a record with people who sign in",
                    "Run './run record create' and './run people add' first, or leave out --bind and --behind-proxy."));
            }

            OldCases old = new(record);
            await old.MoveAsync(options.OldStorePath);
            await old.LoadDemoAsync();
            return record;
        }
        catch
        {
            record.Dispose();
            throw;
        }
    }
}
