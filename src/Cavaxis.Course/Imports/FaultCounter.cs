using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Imports;

/// <summary>Counts all faults of a file and keeps the first.</summary>
internal sealed class FaultCounter
{
    private readonly List<InputFault> kept = [];

    /// <summary>All faults.</summary>
    public int Count { get; private set; }

    /// <summary>The first of them.</summary>
    public IReadOnlyList<InputFault> Kept => kept;

    /// <summary>Counts a fault.</summary>
    public void Add(InputFault fault)
    {
        Count++;
        if (kept.Count < ObservationImport.MostFaults)
        {
            kept.Add(fault);
        }
    }
}
