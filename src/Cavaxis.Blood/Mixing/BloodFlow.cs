using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Mixing;

/// <summary>A flow of blood with what it carries.</summary>
public readonly record struct BloodFlow
{
    /// <summary>A stream of known content.</summary>
    /// <param name="flowLPerMin">Flow, 0 to 50 L/min.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 0 to 25 g/dL.</param>
    /// <param name="oxygenContentMlPerDl">Oxygen content, 0 to 60 mL/dL.</param>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public BloodFlow(double flowLPerMin, double haemoglobinGPerDl, double oxygenContentMlPerDl)
    {
        FlowLPerMin = BloodInput.Flow(flowLPerMin, nameof(flowLPerMin));
        HaemoglobinGPerDl = BloodInput.Haemoglobin(haemoglobinGPerDl);
        OxygenContentMlPerDl = BloodInput.Content(oxygenContentMlPerDl, nameof(oxygenContentMlPerDl));
    }

    /// <summary>Flow, L/min.</summary>
    public double FlowLPerMin { get; }

    /// <summary>Haemoglobin, g/dL.</summary>
    public double HaemoglobinGPerDl { get; }

    /// <summary>Oxygen content, mL/dL.</summary>
    public double OxygenContentMlPerDl { get; }
}
