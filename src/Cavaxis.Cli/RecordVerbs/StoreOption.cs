using System.Text.RegularExpressions;
using Cavaxis.Bedside.Stores;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Engines;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>Reads where the record is.</summary>
internal static partial class StoreOption
{
    private const int LongestSetting = 4096;

    /// <summary>The address that the option names.</summary>
    /// <param name="given">The option; null for the file in the data folder.</param>
    /// <returns>The address.</returns>
    /// <exception cref="InputFaultException">It cannot be used, or carries the password of a server where others see it.</exception>
    public static StoreAddress Address(string? given)
    {
        if (given is null)
        {
            return StoreAddress.Of(RecordPlace.DefaultStore);
        }

        if (given.StartsWith('@'))
        {
            return StoreAddress.Of(CatalogueLoader.Text(given[1..], LongestSetting).Trim());
        }

        return Password().IsMatch(given)
            ? throw new InputFaultException(new InputFault(
                FaultCode.BadOption, "--store", "a text that holds a password", "no password in an argument: others of the machine see it",
                "Put the text in a file for you alone and give --store @FILE, or name a Passfile=."))
            : StoreAddress.Of(given);
    }

    /// <summary>The address of a record that is there.</summary>
    /// <param name="given">The option; null for the file in the data folder.</param>
    /// <returns>The address.</returns>
    /// <exception cref="InputFaultException">It cannot be used.</exception>
    /// <exception cref="CommandFaultException">There is no such file: a mistyped path must not become a new and empty record.</exception>
    public static StoreAddress Existing(string? given)
    {
        StoreAddress address = Address(given);
        return address.Engine != StoreEngineKind.Sqlite || File.Exists(address.Shown)
            ? address
            : throw new CommandFaultException(new CommandFault(
                "notFound", "--store", InputFault.Shown(address.Shown), "a record that was made with `record create`", "Check the path, or make the record."));
    }

    [GeneratedRegex(@"(^|;)\s*[""']?\s*(ssl\s*)?(password|pwd|psw)\s*=", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Password();
}
