using Cavaxis.Course.Observations;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Imports;

/// <summary>The columns of a file.</summary>
/// <param name="Time">Place of the time, from 0.</param>
/// <param name="Quantities">Quantity of each column; null for the time and for columns that are passed over.</param>
internal sealed record ImportHeader(int Time, IReadOnlyList<QuantityDefinition?> Quantities)
{
    private const string TimeName = "time";
    private const int LongestCompared = 60;

    /// <summary>Reads a header.</summary>
    /// <param name="cells">Its cells.</param>
    /// <param name="faults">Takes the faults.</param>
    /// <returns>The columns; null where no row can be read.</returns>
    public static ImportHeader? Of(IReadOnlyList<string> cells, FaultCounter faults)
    {
        int time = -1;
        QuantityDefinition?[] quantities = new QuantityDefinition?[cells.Count];
        HashSet<string> seen = new(StringComparer.Ordinal);
        bool twice = false;
        for (int i = 0; i < cells.Count; i++)
        {
            string name = cells[i].Trim();
            quantities[i] = QuantityTable.Find(name);
            time = name == TimeName && time < 0 ? i : time;
            if (name != TimeName && quantities[i] is null)
            {
                string? closest = Closest(name);
                faults.Add(new InputFault(
                    FaultCode.UnknownField, "header", CellWords.Shown(name), "time and keys of quantities such as pumpFlowLPerMin",
                    closest is null ? "The column is passed over." : $"The column is passed over. Did you mean \"{closest}\"?", 1, i + 1));
            }
            else if (!seen.Add(name))
            {
                twice = true;
                faults.Add(new InputFault(FaultCode.DuplicateField, "header", CellWords.Shown(name), "each column once", "Remove one of the two columns.", 1, i + 1));
            }
        }

        if (time < 0)
        {
            faults.Add(new InputFault(FaultCode.MissingField, "header", "(nothing)", "a column time", "Add the column with date and time (ISO 8601).", 1, 1));
        }

        return time < 0 || twice ? null : new ImportHeader(time, quantities);
    }

    private static string? Closest(string name)
    {
        if (name.Length > LongestCompared)
        {
            return null;
        }

        (string Key, int Distance) nearest = QuantityTable.All.Select(static d => d.Key).Append(TimeName)
            .Select(key => (key, EditDistance.Between(name.ToUpperInvariant(), key.ToUpperInvariant()))).MinBy(static k => k.Item2);
        return nearest.Distance <= Math.Max(1, nearest.Key.Length / 4) ? nearest.Key : null;
    }
}
