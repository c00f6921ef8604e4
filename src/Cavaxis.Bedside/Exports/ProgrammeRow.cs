namespace Cavaxis.Bedside.Exports;

/// <summary>One patient of a programme, for the programme's own table.</summary>
/// <param name="Patient">Identifier in the record.</param>
/// <param name="Configuration">How support was connected, in words.</param>
/// <param name="StartedAt">Start of support; null where it did not begin.</param>
/// <param name="EndedAt">End of support; null where it runs.</param>
/// <param name="Cannulae">Number of cannulae placed.</param>
/// <param name="Malpositions">Number of malpositions found.</param>
/// <param name="LimbIschaemia">Whether a limb was ischaemic; null where unknown.</param>
/// <param name="Thrombosis">Whether a vein was found thrombosed; null where no one looked.</param>
/// <param name="Complications">Complications in words.</param>
/// <param name="Survived">Whether the patient survived to discharge; null where unknown or still in hospital.</param>
public sealed record ProgrammeRow(
    string Patient, string Configuration, DateTimeOffset? StartedAt, DateTimeOffset? EndedAt, int Cannulae, int Malpositions, bool? LimbIschaemia, bool? Thrombosis,
    IReadOnlyList<string> Complications, bool? Survived);
