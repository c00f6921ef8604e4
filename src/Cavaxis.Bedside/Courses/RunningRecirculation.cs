using Cavaxis.Course.GasExchange;
using Cavaxis.Course.Observations;
using Cavaxis.Quantities;
using static Cavaxis.Course.Observations.ObservedQuantity;

namespace Cavaxis.Bedside.Courses;

/// <summary>Recirculation by every method for which a course holds readings.</summary>
/// <param name="Site">Where the venous sample was drawn; null where none was.</param>
/// <param name="BySaturation">By saturations; null where a sample is missing.</param>
/// <param name="ByContent">By oxygen contents; null where a sample is missing.</param>
/// <param name="Corrected">By contents with the returned blood in a pulmonary artery sample taken off; null where that cannot be done.</param>
/// <param name="ByDilution">By dilution as it was written down; null where it was not.</param>
/// <param name="Used">The readings that went in.</param>
/// <param name="Missing">Words of the samples without which gases tell nothing.</param>
public sealed record RunningRecirculation(
    VenousSite? Site,
    RecirculationMeasurement? BySaturation,
    RecirculationMeasurement? ByContent,
    RecirculationMeasurement? Corrected,
    RecirculationMeasurement? ByDilution,
    IReadOnlyList<ReadingAtHand> Used,
    IReadOnlyList<string> Missing)
{
    private const double LowestHaemoglobin = 3;

    /// <summary>The one to go on with: by contents, which mixing conserves, before dilution, before saturations; null where none has a number.</summary>
    public RecirculationMeasurement? Best => new[] { Corrected, ByContent, ByDilution, BySaturation }.FirstOrDefault(static m => m?.IsTold == true);

    /// <summary>What the readings tell.</summary>
    /// <param name="readings">The readings.</param>
    /// <param name="site">Where the venous sample is taken from; null for the upper cava, or else the pulmonary artery.</param>
    /// <param name="venousPercent">Venous saturation that does not stand in the record as such, as that of drainage blood with the sweep off.</param>
    /// <returns>Recirculation by each method.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">The venous saturation is out of range.</exception>
    public static RunningRecirculation Of(ReadingsAtHand readings, VenousSite? site = null, Estimate? venousPercent = null)
    {
        ArgumentNullException.ThrowIfNull(readings);
        VenousSite from = site ?? (readings.Find(CentralVenousSaturationPercent) is null && readings.Find(PulmonaryArterySaturationPercent) is not null ? VenousSite.PulmonaryArtery : VenousSite.UpperCava);
        ObservedQuantity? sampled = from switch
        {
            VenousSite.UpperCava => CentralVenousSaturationPercent,
            VenousSite.PulmonaryArtery => PulmonaryArterySaturationPercent,
            _ => null,
        };
        Estimate? venous = venousPercent ?? (sampled is ObservedQuantity quantity ? readings[quantity] : null);
        List<string> missing = [.. readings.Missing(PreMembraneSaturationPercent, PostMembraneSaturationPercent)];
        if (venous is null)
        {
            missing.Add(sampled is ObservedQuantity needed ? QuantityTable.Of(needed).Words : "saturation of drainage blood with the sweep off");
        }

        ReadingAtHand[] used = [.. readings.Read(
            PreMembraneSaturationPercent, PostMembraneSaturationPercent, PreMembranePo2MmHg, PostMembranePo2MmHg, HaemoglobinGPerDl, RecirculationPercent)];
        if (venousPercent is null && sampled is ObservedQuantity drawn && readings.Find(drawn) is ReadingAtHand sample)
        {
            used = [.. used, sample];
        }

        RecirculationMeasurement? dilution = readings[RecirculationPercent] is Estimate written
            ? new RecirculationMeasurement(RecirculationMethod.Dilution, written, "Recirculation by dilution as it was written down.", [])
            : null;
        if (missing.Count > 0)
        {
            return new RunningRecirculation(venous is null ? null : from, null, null, null, dilution, used, missing);
        }

        RecirculationReadings samples = new(
            new OxygenSample(readings[PreMembraneSaturationPercent]!, readings[PreMembranePo2MmHg]),
            new OxygenSample(readings[PostMembraneSaturationPercent]!, readings[PostMembranePo2MmHg]),
            new VenousSample(new OxygenSample(venous!), from),
            readings[HaemoglobinGPerDl] is Estimate haemoglobin && haemoglobin.Value >= LowestHaemoglobin ? haemoglobin : null);
        RecirculationMeasurement content = BloodGasRecirculation.ByContent(samples);
        return new RunningRecirculation(from, BloodGasRecirculation.BySaturation(samples), content, WithoutReturned(from, content, readings), dilution, used, []);
    }

    private static RecirculationMeasurement? WithoutReturned(VenousSite site, RecirculationMeasurement measured, ReadingsAtHand readings) =>
        site == VenousSite.PulmonaryArtery && readings[PumpFlowLPerMin] is { Value: >= 0.01 } flow && readings[CardiacOutputLPerMin] is { Value: >= 0.01 } output
            ? PulmonaryArteryCorrection.Apply(measured, flow, output)
            : null;
}
