using System.Text.Json;
using Cavaxis.Bedside.Sealing;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Faults;

namespace Cavaxis.Cli.Output;

/// <summary>A refusal of the record, told in the form of a fault of an input.</summary>
/// <param name="Code">Stable kind, camelCase.</param>
/// <param name="Field">What it is about.</param>
/// <param name="Value">What was found.</param>
/// <param name="Accepted">What is needed.</param>
/// <param name="Remedy">What to do about it.</param>
public sealed record CommandFault(string Code, string Field, string Value, string Accepted, string Remedy)
{
    /// <summary>The refusal of a store.</summary>
    /// <param name="fault">As the store tells it.</param>
    /// <returns>The fault.</returns>
    public static CommandFault Of(StoreFault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        return new CommandFault(CodeOf(fault.Code), "store", InputFault.Shown(fault.Found), fault.Accepted, fault.Remedy);
    }

    /// <summary>The refusal of a sealed file.</summary>
    /// <param name="fault">As the file's reader tells it.</param>
    /// <returns>The fault.</returns>
    public static CommandFault Of(SealFault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        return new CommandFault(CodeOf(fault.Code), "file", InputFault.Shown(fault.Found), fault.Accepted, fault.Remedy);
    }

    /// <summary>The stable word of a code.</summary>
    /// <typeparam name="T">Kind of code.</typeparam>
    /// <param name="code">The code.</param>
    /// <returns>The word.</returns>
    public static string CodeOf<T>(T code)
        where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(code.ToString());

    /// <inheritdoc/>
    public override string ToString() => $"{Field}: {Value}; accepted: {Accepted}. {Remedy}";
}
