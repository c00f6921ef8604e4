namespace Cavaxis.Cli.Output;

/// <summary>Thrown where a verb is refused: nothing was done.</summary>
public sealed class CommandFaultException : Exception
{
    /// <summary>Wraps a refusal.</summary>
    /// <param name="fault">The refusal.</param>
    public CommandFaultException(CommandFault fault)
        : base(fault?.ToString())
    {
        ArgumentNullException.ThrowIfNull(fault);
        Fault = fault;
    }

    /// <summary>The refusal.</summary>
    public CommandFault Fault { get; }
}
