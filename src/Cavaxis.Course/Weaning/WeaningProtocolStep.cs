namespace Cavaxis.Course.Weaning;

/// <summary>A step of a published protocol.</summary>
/// <param name="Words">What is done, as the source describes it.</param>
/// <param name="ShortestMin">Shortest time that the source holds it, min.</param>
/// <param name="LongestMin">Longest, min.</param>
public sealed record WeaningProtocolStep(string Words, double ShortestMin, double LongestMin);
