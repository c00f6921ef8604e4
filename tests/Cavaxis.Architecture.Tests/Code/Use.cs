namespace Cavaxis.Architecture.Tests.Code;

/// <summary>One use of a member in compiled code.</summary>
/// <param name="By">Full name of the method that uses it.</param>
/// <param name="Type">Full name of the type used, without generic arguments.</param>
/// <param name="Member">Name of the member.</param>
/// <param name="Parameters">Full names of the types of its parameters.</param>
/// <param name="Arguments">Full names of its generic arguments.</param>
public sealed record Use(string By, string Type, string Member, IReadOnlyList<string> Parameters, IReadOnlyList<string> Arguments)
{
    public override string ToString() => $"{By} uses {Type}.{Member}({string.Join(", ", Parameters)})";
}
