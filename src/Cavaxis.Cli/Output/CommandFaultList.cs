namespace Cavaxis.Cli.Output;

/// <summary>Refusals as JSON, in the form of the faults of an input.</summary>
/// <param name="Faults">Every refusal.</param>
public sealed record CommandFaultList(IReadOnlyList<CommandFault> Faults);
