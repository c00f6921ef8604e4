using Cavaxis.Cli.Commands;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Chain;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>Reads the texts that verbs of the record take.</summary>
internal static class VerbText
{
    private const int LongestAnchor = 1024;

    /// <summary>An option that must be given.</summary>
    /// <param name="value">As given.</param>
    /// <param name="option">Its name.</param>
    /// <returns>The value.</returns>
    /// <exception cref="InputFaultException">Nothing was given.</exception>
    public static string Given(string? value, string option) => string.IsNullOrWhiteSpace(value)
        ? throw new InputFaultException(new InputFault(FaultCode.MissingField, option, "(nothing)", $"{option} with a value", "Add it."))
        : value;

    /// <summary>A role.</summary>
    /// <param name="value">As given.</param>
    /// <returns>The role.</returns>
    /// <exception cref="InputFaultException">No such role.</exception>
    public static Role RoleOf(string value) =>
        Enum.GetValues<Role>().Where(r => string.Equals(r.ToString(), value, StringComparison.OrdinalIgnoreCase)).Select(static r => (Role?)r).FirstOrDefault()
        ?? throw new InputFaultException(new InputFault(FaultCode.NotAChoice, "--role", InputFault.Shown(value), "reader, clinician, lead or administrator", "Give one of these."));

    /// <summary>The anchor in a file.</summary>
    /// <param name="path">Path; null for none.</param>
    /// <returns>The anchor; null for none.</returns>
    /// <exception cref="InputFaultException">The file cannot be read, or holds no such line.</exception>
    public static ChainAnchor? AnchorIn(string? path) => path is null ? null : ChainAnchor.Parse(CatalogueLoader.Text(path, LongestAnchor).Trim());
}
