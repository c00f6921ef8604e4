using Mono.Cecil;
using Mono.Cecil.Cil;

namespace Cavaxis.Architecture.Tests.Code;

/// <summary>
/// Reads what compiled methods call, down to lambdas and iterators, in which a search over the written types would miss it.
/// </summary>
public static class CodeScan
{
    /// <summary>Every call, construction or field access in an assembly.</summary>
    /// <param name="path">Path of the assembly.</param>
    /// <param name="home">Only types whose full name begins so; empty for all.</param>
    public static IReadOnlyList<Use> Uses(string path, string home = "")
    {
        using AssemblyDefinition assembly = AssemblyDefinition.ReadAssembly(path);
        return [.. assembly.Modules.SelectMany(static m => m.GetTypes())
            .Where(t => t.FullName.StartsWith(home, StringComparison.Ordinal))
            .SelectMany(static type => type.Methods.Where(static m => m.HasBody).SelectMany(Uses))];
    }

    private static IEnumerable<Use> Uses(MethodDefinition method)
    {
        foreach (Instruction instruction in method.Body.Instructions)
        {
            if (instruction.Operand is MemberReference { DeclaringType: TypeReference type } member)
            {
                string[] parameters = member is MethodReference called ? [.. called.Parameters.Select(static p => p.ParameterType.FullName)] : [];
                string[] arguments = member is GenericInstanceMethod generic ? [.. generic.GenericArguments.Select(static a => a.FullName)] : [];
                yield return new Use(method.FullName, type.GetElementType().FullName, member.Name, parameters, arguments);
            }
        }
    }
}
