using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Images;

/// <summary>What became of the files that were handed in.</summary>
/// <param name="Taken">The images and series that are kept now.</param>
/// <param name="Refused">Why others were not taken, one fault a file.</param>
public sealed record ImagesTaken(IReadOnlyList<TakenImage> Taken, IReadOnlyList<InputFault> Refused);
