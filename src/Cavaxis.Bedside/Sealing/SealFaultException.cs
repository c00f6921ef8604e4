namespace Cavaxis.Bedside.Sealing;

/// <summary>Thrown when a sealed file cannot be used. Nothing of its contents was given out.</summary>
public sealed class SealFaultException : Exception
{
    /// <summary>Wraps a fault.</summary>
    /// <param name="fault">The fault.</param>
    public SealFaultException(SealFault fault)
        : base(fault?.ToString())
    {
        ArgumentNullException.ThrowIfNull(fault);
        Fault = fault;
    }

    /// <summary>The fault.</summary>
    public SealFault Fault { get; }
}
