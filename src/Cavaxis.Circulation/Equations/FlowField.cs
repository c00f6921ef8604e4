using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Lanes;

namespace Cavaxis.Circulation.Equations;

/// <summary>Pressures (mmHg) and flows (mL/s) of a moment, as the blood flow equations leave them for the gas equations and for the record.</summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class FlowField<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Pressure of each volume, in the order of <see cref="StateIndex"/>.</summary>
    internal readonly T[] Pressure = new T[StateIndex.VolumeCount];

    /// <summary>Pressure difference that opens each one-way element: four valves, then the circuit.</summary>
    internal readonly T[] Opening = new T[5];

    /// <summary>Drainage from each part of the axis.</summary>
    internal readonly T[] Drained = new T[AxisPorts.CellCount];

    /// <summary>Return to each part of the axis.</summary>
    internal readonly T[] ReturnedTo = new T[AxisPorts.CellCount];

    internal T Pleural;
    internal T Abdominal;
    internal T Alveolar;
    internal T Wedge;
    internal T CoronaryFlow;
    internal T UpperFromAscending;
    internal T UpperFromArch;
    internal T SplanchnicFlow;
    internal T LowerFlow;
    internal T UpperVenousFlow;
    internal T HepaticFlow;
    internal T LowerVenousFlow;
    internal T SuperiorCavaFlow;
    internal T ThoracicCavaFlow;
    internal T DiaphragmFlow;
    internal T LungFlow;
    internal T PulmonaryVenousFlow;
    internal T AorticLeak;
    internal T MitralLeak;
    internal T SeptalFlow;
    internal T VentFlow;
    internal T TransvalvularFlow;
    internal T DrainageFlow;
    internal T VenousReturnFlow;
    internal T ReturnToAscending;
    internal T ReturnToDescending;
    internal T InletPressure;
    internal T OutletPressure;
    internal T Openness;
    internal T SuperiorCavaChange;
    internal T AtriumChange;
    internal T AbdominalCavaChange;
    internal T ThoracicCavaChange;
}
