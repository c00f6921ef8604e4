namespace Cavaxis.Cli;

/// <summary>What the program ends with.</summary>
public enum ExitCode
{
    /// <summary>Done.</summary>
    Done = 0,

    /// <summary>Done, and a hard stop was found, or a validation row fails.</summary>
    StopFound = 1,

    /// <summary>The input or the command cannot be used.</summary>
    InputError = 2,

    /// <summary>The program itself failed.</summary>
    InternalError = 3,
}
