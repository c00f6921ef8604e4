using Cavaxis.Blood.Oxygen;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Mixing;

/// <summary>
/// Complete mixing of streams. Flow, haemoglobin and oxygen content are conserved; saturation and PO2 are not, and follow
/// from the mixed content.
/// </summary>
public static class BloodMixing
{
    /// <summary>Mixes streams.</summary>
    /// <param name="streams">At least one stream; together they must flow.</param>
    /// <param name="conditions">Conditions of the mixed blood.</param>
    /// <param name="k">Constants.</param>
    /// <returns>The mixed blood.</returns>
    /// <exception cref="InputFaultException">Nothing flows, the conditions are missing, or the content is out of reach.</exception>
    public static MixedBlood Mix(ReadOnlySpan<BloodFlow> streams, in BloodConditions conditions, BloodConstants k)
    {
        ArgumentNullException.ThrowIfNull(k);
        double flow = 0;
        double haemoglobin = 0;
        double oxygen = 0;
        foreach (BloodFlow stream in streams)
        {
            flow += stream.FlowLPerMin;
            haemoglobin += stream.FlowLPerMin * stream.HaemoglobinGPerDl;
            oxygen += stream.FlowLPerMin * stream.OxygenContentMlPerDl;
        }

        if (!(flow > 0))
        {
            throw new InputFaultException(new InputFault(
                FaultCode.MissingField, "streams", "(nothing)", "at least one stream with a flow above 0 L/min",
                "Give the streams that mix."));
        }

        haemoglobin /= flow;
        double content = oxygen / flow;
        double po2 = OxygenContent.Po2At(content, haemoglobin, conditions, k);
        return new MixedBlood(
            flow, haemoglobin, content, OxygenDissociation.StandardSaturation(po2 * conditions.VirtualPo2Factor), po2);
    }
}
