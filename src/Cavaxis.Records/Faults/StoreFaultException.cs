namespace Cavaxis.Records.Faults;

/// <summary>Thrown when a store cannot do what was asked. Nothing of the refused change is kept; all that was acknowledged before is.</summary>
public sealed class StoreFaultException : Exception
{
    /// <summary>Wraps a fault.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="cause">What the database said; null where the fault was found by this program.</param>
    public StoreFaultException(StoreFault fault, Exception? cause = null)
        : base(fault?.ToString(), cause)
    {
        ArgumentNullException.ThrowIfNull(fault);
        Fault = fault;
    }

    /// <summary>The fault.</summary>
    public StoreFault Fault { get; }
}
