using Cavaxis.Course.Events;

namespace Cavaxis.Course.Patients;

/// <summary>A trial of weaning as it was written down. It is not judged here.</summary>
/// <param name="Started">How it began.</param>
/// <param name="Steps">Its steps, oldest first.</param>
/// <param name="Ended">How it ended; null while it goes on.</param>
public sealed record WeaningTrialLog(Logged<WeaningStarted> Started, IReadOnlyList<Logged<WeaningStepped>> Steps, Logged<WeaningEnded>? Ended);
