using System.Collections.Immutable;
using Cavaxis.Course.Explanations.Knowledge;

namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>A cause with what speaks for and against it.</summary>
/// <param name="Cause">Cause.</param>
/// <param name="Words">Its words.</param>
/// <param name="Meaning">What happens.</param>
/// <param name="Probability">Probability among the causes that are known here, 0 to 1.</param>
/// <param name="Sureness">The same in words.</param>
/// <param name="For">Signs that raise its odds, strongest first.</param>
/// <param name="Against">Signs that lower them, strongest first.</param>
public sealed record Explanation(
    CauseOfChange Cause,
    string Words,
    string Meaning,
    double Probability,
    string Sureness,
    ImmutableArray<SignEvidence> For,
    ImmutableArray<SignEvidence> Against);
