using Cavaxis.Course.Patients;

namespace Cavaxis.Bedside.Courses;

/// <summary>A patient in one line of a list.</summary>
/// <param name="Patient">The patient's identifier.</param>
/// <param name="Title">Title of the case; null where it has none or cannot be read.</param>
/// <param name="Invented">True where the case says that it is invented.</param>
/// <param name="Running">The run of support that goes on; null where none does.</param>
/// <param name="Last">The last thing that happened; null where nothing did.</param>
/// <param name="OpenComplications">Complications that are not over.</param>
/// <param name="Version">Number of events in the record.</param>
/// <param name="Line">All this in one line, with the number of days on support.</param>
public sealed record PatientSummary(
    string Patient, string? Title, bool Invented, SupportRun? Running, TimelineLine? Last, int OpenComplications, long Version, string Line);
