using Cavaxis.Quantities.Faults;
using Microsoft.Data.Sqlite;

namespace Cavaxis.Web.Shelf;

/// <summary>Turns what the store refuses into a fault that a person can act on.</summary>
internal static class ShelfFault
{
    private const int DiskFull = 13;
    private const int CannotOpen = 14;
    private const int ReadOnly = 8;
    private const int Corrupt = 11;
    private const int NotADatabase = 26;
    private const int Busy = 5;

    /// <summary>The fault for a refusal of the store.</summary>
    /// <param name="refusal">What the store said.</param>
    /// <returns>An exception to throw in its place.</returns>
    public static InputFaultException Of(SqliteException refusal) => new(refusal.SqliteErrorCode switch
    {
        DiskFull => Fault("the disk is full", "room on the disk", "Make room; the last saved version is kept, and the value on the screen is saved as soon as there is room."),
        CannotOpen or ReadOnly => Fault("the file cannot be opened for writing", "a folder you may write to", "Check the folder of --data and its permissions."),
        Corrupt or NotADatabase => Fault("the file is damaged or no store of cases", "a store that this program wrote", "Put the file aside, start again, and import the cases from their exports or from a copy."),
        Busy => Fault("another program holds the file", "a store that no other program has locked", "Close the other program and try again."),
        _ => Fault("the disk did not take or give the data", "a disk that can be read and written", "Check the disk; what was saved before is kept."),
    });

    /// <summary>The fault for a patient that is not there.</summary>
    /// <param name="id">Identifier asked for.</param>
    /// <returns>An exception to throw.</returns>
    public static InputFaultException NoPatient(string id) => new(new InputFault(
        FaultCode.NotFound, "patient", InputFault.Shown(id), "a patient on the list", "Go back to the list of patients."));

    private static InputFault Fault(string value, string accepted, string remedy) => new(FaultCode.UnreadableFile, "store of cases", value, accepted, remedy);
}
