using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.Output;

/// <summary>The faults of an input as JSON.</summary>
/// <param name="Faults">Every fault.</param>
public sealed record FaultList(IReadOnlyList<InputFault> Faults);
