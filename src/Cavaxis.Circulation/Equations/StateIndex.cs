namespace Cavaxis.Circulation.Equations;

/// <summary>Places of the quantities in the state of one patient.</summary>
internal static class StateIndex
{
    // Volumes, mL.
    public const int RightAtrium = 0;
    public const int RightVentricle = 1;
    public const int PulmonaryArtery = 2;
    public const int PulmonaryVein = 3;
    public const int LeftAtrium = 4;
    public const int LeftVentricle = 5;
    public const int Ascending = 6;
    public const int Arch = 7;
    public const int Descending = 8;
    public const int UpperVein = 9;
    public const int SplanchnicVein = 10;
    public const int LowerVein = 11;
    public const int SuperiorCava = 12;
    public const int ThoracicCava = 13;
    public const int AbdominalCava = 14;
    public const int VolumeCount = 15;

    // Flows with inertia, mL/s: four valves, two pieces of aorta, the circuit.
    public const int TricuspidFlow = 15;
    public const int PulmonaryValveFlow = 16;
    public const int MitralFlow = 17;
    public const int AorticValveFlow = 18;
    public const int ArchFlow = 19;
    public const int DescendingFlow = 20;
    public const int CircuitFlow = 21;

    /// <summary>Pump speed over the speed of its curve.</summary>
    public const int SpeedRatio = 22;

    // Reflex: arterial pressure as sensed, then four effectors between -1 and 1.
    public const int SensedPressure = 23;
    public const int ReflexRate = 24;
    public const int ReflexResistance = 25;
    public const int ReflexElastance = 26;
    public const int ReflexVolume = 27;

    // Amounts of gas, mL, one for each node; then amounts of returned blood in the axis, mL.
    public const int Oxygen = 28;
    public const int CarbonDioxide = Oxygen + GasNode.Count;
    public const int Returned = CarbonDioxide + GasNode.Count;
    public const int AlveolarOxygen = Returned + 10;
    public const int AlveolarCarbonDioxide = AlveolarOxygen + 1;

    // Running totals, mL: what entered and left through lungs, membrane and tissues.
    public const int OxygenFromLungs = AlveolarCarbonDioxide + 1;
    public const int OxygenFromMembrane = OxygenFromLungs + 1;
    public const int OxygenConsumed = OxygenFromLungs + 2;
    public const int CarbonDioxideByLungs = OxygenFromLungs + 3;
    public const int CarbonDioxideByMembrane = OxygenFromLungs + 4;
    public const int CarbonDioxideProduced = OxygenFromLungs + 5;
    public const int Count = OxygenFromLungs + 6;
}
