using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Needs;

namespace Cavaxis.Planning.Search;

/// <summary>The anatomies of one patient: the population's, conditioned on all that the case measured.</summary>
public static class PatientAnatomies
{
    /// <summary>Draws them.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="count">How many, at least 1.</param>
    /// <param name="seed">Seed; the same seed gives the same anatomies.</param>
    /// <returns>The anatomies.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count is not positive.</exception>
    public static AxisSamples Draw(CaseFile caseFile, int count, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(caseFile);
        return AxisSampler.Draw(AxisFromCase.Distribution(caseFile, new PatientReading(caseFile).Habitus), count, seed);
    }

    /// <summary>Height over that of the reference adult, at most 1: steps between edges of a junction shrink with it.</summary>
    /// <param name="caseFile">The case.</param>
    /// <returns>Above 0, at most 1.</returns>
    public static double BodyScale(CaseFile caseFile)
    {
        ArgumentNullException.ThrowIfNull(caseFile);
        return Math.Min(1, caseFile.Patient.HeightCm / BodyHabitus.ReferenceHeightCm);
    }
}
