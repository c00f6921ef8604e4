using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Circulation.Equations;

/// <summary>The parameters of the patients of a row, one number of each parameter for each patient.</summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class ModelConstants<T>
    where T : unmanaged, ILane<T>
{
    private readonly T[] values = new T[ParameterTable.Count];

    /// <summary>Loads the parameters.</summary>
    /// <param name="patients">One set for each lane.</param>
    public ModelConstants(ReadOnlySpan<CirculationParameters> patients)
    {
        if (patients.Length != T.Count)
        {
            throw new ArgumentException("One set of parameters for each lane is needed.", nameof(patients));
        }

        Span<double> row = stackalloc double[T.Count];
        for (int i = 0; i < values.Length; i++)
        {
            for (int lane = 0; lane < T.Count; lane++)
            {
                row[lane] = patients[lane].Values[i];
            }

            values[i] = T.Load(row);
        }

        for (int cell = 0; cell < AxisPorts.CellCount; cell++)
        {
            for (int lane = 0; lane < T.Count; lane++)
            {
                row[lane] = patients[lane].Ports.Drainage[cell];
            }

            Drainage[cell] = T.Load(row);
            for (int lane = 0; lane < T.Count; lane++)
            {
                row[lane] = patients[lane].Ports.VenousReturn[cell];
            }

            VenousReturn[cell] = T.Load(row);
        }
    }

    /// <summary>Share of the drainage from each part of the axis.</summary>
    public T[] Drainage { get; } = new T[AxisPorts.CellCount];

    /// <summary>Share of the venous return to each part of the axis.</summary>
    public T[] VenousReturn { get; } = new T[AxisPorts.CellCount];

    /// <summary>A parameter.</summary>
    /// <param name="parameter">Which.</param>
    public T this[CirculationParameter parameter] => values[(int)parameter];
}
