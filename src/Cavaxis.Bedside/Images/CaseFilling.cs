using System.Text.Json.Nodes;
using Cavaxis.Course.Events;

namespace Cavaxis.Bedside.Images;

/// <summary>What is written into a case for one measurement on an image: the value with its own error, and how it was measured where the field asks for that.</summary>
/// <param name="Target">The field.</param>
/// <param name="Value">The value as it is written, in the field's unit.</param>
/// <param name="Sd">Its standard deviation as it is written.</param>
/// <param name="Fields">Paths of the case with what stands there afterwards, the value first; null takes out what belonged to another measurement.</param>
public sealed record CaseFilling(CaseTarget Target, double Value, double Sd, IReadOnlyList<(string Path, JsonNode? Value)> Fields)
{
    /// <summary>What the record says of it.</summary>
    public CaseFieldFilled Entry => new() { Field = Target.Path, Value = Value, Sd = Sd };
}
