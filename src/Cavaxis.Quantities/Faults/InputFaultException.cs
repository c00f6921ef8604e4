namespace Cavaxis.Quantities.Faults;

/// <summary>Thrown when an input cannot be used. Carries every fault found, not only the first.</summary>
public sealed class InputFaultException : Exception
{
    /// <summary>Wraps the faults of one input.</summary>
    /// <param name="faults">At least one fault.</param>
    public InputFaultException(IReadOnlyList<InputFault> faults)
        : base(string.Join(Environment.NewLine, faults)) => Faults = faults;

    /// <summary>Wraps a single fault.</summary>
    /// <param name="fault">The fault.</param>
    public InputFaultException(InputFault fault)
        : this([fault])
    {
    }

    /// <summary>All faults, in the order of their place in the input.</summary>
    public IReadOnlyList<InputFault> Faults { get; }
}
