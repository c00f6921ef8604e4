using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Lanes;

namespace Cavaxis.Circulation.Equations;

/// <summary>Pressures (mmHg) and flows (mL/s) of a moment, as the blood flow equations leave them for the gas equations and for the record.</summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class FlowField<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Pressure of each volume, in the order of <see cref="StateIndex"/>.</summary>
    public readonly T[] Pressure = new T[StateIndex.VolumeCount];

    /// <summary>Pressure difference that opens each one-way element: four valves, then the circuit.</summary>
    public readonly T[] Opening = new T[5];

    /// <summary>Drainage from each part of the axis.</summary>
    public readonly T[] Drained = new T[AxisPorts.CellCount];

    /// <summary>Return to each part of the axis.</summary>
    public readonly T[] ReturnedTo = new T[AxisPorts.CellCount];

    public T Pleural;
    public T Abdominal;
    public T Alveolar;
    public T Wedge;
    public T CoronaryFlow;
    public T UpperFromAscending;
    public T UpperFromArch;
    public T SplanchnicFlow;
    public T LowerFlow;
    public T UpperVenousFlow;
    public T HepaticFlow;
    public T LowerVenousFlow;
    public T SuperiorCavaFlow;
    public T ThoracicCavaFlow;
    public T DiaphragmFlow;
    public T LungFlow;
    public T PulmonaryVenousFlow;
    public T AorticLeak;
    public T MitralLeak;
    public T SeptalFlow;
    public T VentFlow;
    public T TransvalvularFlow;
    public T DrainageFlow;
    public T VenousReturnFlow;
    public T ReturnToAscending;
    public T ReturnToDescending;
    public T InletPressure;
    public T OutletPressure;
    public T Openness;
    public T SuperiorCavaChange;
    public T AtriumChange;
    public T AbdominalCavaChange;
    public T ThoracicCavaChange;
}
