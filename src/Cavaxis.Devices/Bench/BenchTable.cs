using System.Globalization;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using CsvHelper;

namespace Cavaxis.Devices.Bench;

/// <summary>The table of flows and pressure drops in a bench file.</summary>
internal static class BenchTable
{
    private const int MostPoints = 1000;

    // Bench readings scatter; a drop that falls by more than this while the flow rises is a mistyped point.
    private const double LargestFall = 0.05;

    /// <summary>Reads the table; faults go to the list with their lines.</summary>
    internal static List<BenchPoint> Read(string text, List<InputFault> faults)
    {
        List<BenchPoint> points = [];
        CsvReaderOptions options = new()
        {
            HasHeader = false,
            Separator = Separator(text),
            CommentPrefix = '#',
            MalformedData = CsvMalformedDataHandling.Throw,
            SkipEmptyLines = true,
            TrimWhitespace = true,
            TrackLineNumbers = true,
            MaxRecordSize = 10_000,
        };
        using CsvReader reader = CsvReader.FromText(text, options);
        Columns? columns = null;
        int line = 1;
        try
        {
            while (reader.Read())
            {
                string[] record = reader.Current.ToArray();
                line = (int)reader.LineNumber;
                if (columns is null)
                {
                    columns = Header(record, line, faults);
                    if (columns is null)
                    {
                        return points;
                    }
                }
                else if (points.Count >= MostPoints)
                {
                    faults.Add(new InputFault(FaultCode.WrongLength, "(the file)", $"more than {MostPoints} points", $"at most {MostPoints} points", "Thin out the points.", line, 1));
                    return points;
                }
                else if (Row(record, columns, line, faults) is { } point)
                {
                    points.Add(point);
                }
            }
        }
        catch (CsvFormatException fault)
        {
            faults.Add(new InputFault(
                FaultCode.MalformedText, "(the file)", "text that is no table", "comma-separated values", "Correct the quotes in this line.",
                Math.Max(line, (int)fault.LineNumber), 1));
            return points;
        }

        if (columns is null)
        {
            faults.Add(new InputFault(FaultCode.MissingField, "flow", "(nothing)", "a heading line 'flow [L/min],pressure drop [mmHg]'", "Add the heading line."));
        }

        CheckRising(points, faults);
        return points;
    }

    private static char Separator(string text)
    {
        foreach (ReadOnlySpan<char> raw in text.AsSpan().EnumerateLines())
        {
            ReadOnlySpan<char> line = raw.Trim();
            if (line.Length > 0 && line[0] != '#')
            {
                return line.Contains(';') ? ';' : line.Contains('\t') ? '\t' : ',';
            }
        }

        return ',';
    }

    private static Columns? Header(string[] record, int line, List<InputFault> faults)
    {
        Columns columns = new();
        int before = faults.Count;
        for (int i = 0; i < record.Length; i++)
        {
            string heading = record[i].Trim();
            int bracket = heading.IndexOf('[', StringComparison.Ordinal);
            string name = (bracket < 0 ? heading : heading[..bracket]).Trim();
            string unit = bracket >= 0 && heading.EndsWith(']') ? heading[(bracket + 1)..^1] : string.Empty;
            double? factor = name switch
            {
                "flow" => BenchUnits.Flow(unit),
                "pressure drop" => BenchUnits.DropPa(unit),
                _ => 0,
            };
            if (factor == 0)
            {
                faults.Add(new InputFault(FaultCode.UnknownField, InputFault.Shown(heading), "a column", "the columns flow and pressure drop", "Name the column or take it out.", line, 1));
            }
            else if (factor is not double scale)
            {
                faults.Add(new InputFault(
                    FaultCode.NotAChoice, name, unit.Length == 0 ? "(no unit)" : InputFault.Shown(unit),
                    name == "flow" ? "a unit of flow such as [L/min] or [mL/min]" : "a unit of pressure such as [mmHg], [kPa] or [cmH2O]",
                    "Write the unit in square brackets behind the name.", line, 1));
            }
            else if (!columns.Set(name, i, scale))
            {
                faults.Add(new InputFault(FaultCode.DuplicateField, name, InputFault.Shown(heading), "each column once", "Take one of the two out.", line, 1));
            }
        }

        foreach (string name in columns.Missing().Where(_ => faults.Count == before))
        {
            faults.Add(new InputFault(FaultCode.MissingField, name, "(nothing)", $"a column {name} with its unit", "Add the column.", line, 1));
        }

        return faults.Count == before ? columns : null;
    }

    private static BenchPoint? Row(string[] record, Columns columns, int line, List<InputFault> faults)
    {
        if (record.Length != columns.Count)
        {
            faults.Add(new InputFault(
                FaultCode.MalformedText, "(the line)", string.Create(CultureInfo.InvariantCulture, $"{record.Length} values"),
                string.Create(CultureInfo.InvariantCulture, $"{columns.Count} values"), "Give one value for each column; write decimals with a point.", line, 1));
            return null;
        }

        double? flow = Value(record[columns.Flow], "flow", columns.FlowFactor, 1e-8, LumenHydraulics.HighestFlowM3PerS, UnitFactors.CubicMetresPerSecondPerLPerMin, "L/min", line, faults);
        double? drop = Value(record[columns.Drop], "pressure drop", columns.DropFactor, 0.1, 3e5, UnitFactors.PascalsPerMmHg, "mmHg", line, faults);
        return flow is double q && drop is double p ? new BenchPoint(q, p, line) : null;
    }

    private static double? Value(
        string text, string name, double factor, double low, double high, double shown, string unit, int line, List<InputFault> faults)
    {
        string accepted = string.Create(CultureInfo.InvariantCulture, $"a positive number, {low / shown:G3} to {high / shown:G3} {unit}");
        if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value))
        {
            faults.Add(new InputFault(
                string.IsNullOrWhiteSpace(text) ? FaultCode.MissingField : FaultCode.WrongKind, name,
                string.IsNullOrWhiteSpace(text) ? "(nothing)" : InputFault.Shown(text), accepted, "Write a bare number with a decimal point.", line, 1));
            return null;
        }

        value *= factor;
        if (value >= low && value <= high)
        {
            return value;
        }

        faults.Add(new InputFault(FaultCode.OutOfRange, name, InputFault.Shown(text), accepted, "Give magnitudes, leave out the zero point, and check the unit.", line, 1));
        return null;
    }

    private static void CheckRising(List<BenchPoint> points, List<InputFault> faults)
    {
        BenchPoint highest = default;
        foreach (BenchPoint point in points.OrderBy(p => p.FlowM3PerS))
        {
            if (point.FlowM3PerS > highest.FlowM3PerS && point.DropPa < highest.DropPa * (1 - LargestFall))
            {
                faults.Add(new InputFault(
                    FaultCode.Contradiction, "pressure drop",
                    string.Create(CultureInfo.InvariantCulture, $"{point.DropPa / UnitFactors.PascalsPerMmHg:G4} mmHg"),
                    string.Create(CultureInfo.InvariantCulture, $"a drop above that of the lower flow in line {highest.Line} ({highest.DropPa / UnitFactors.PascalsPerMmHg:G4} mmHg)"),
                    "Look for a mistyped point.", point.Line, 1));
            }

            if (point.DropPa > highest.DropPa)
            {
                highest = point;
            }
        }
    }

    private sealed class Columns
    {
        private static readonly string[] Names = ["flow", "pressure drop"];
        private readonly Dictionary<string, (int Index, double Factor)> places = new(StringComparer.Ordinal);

        internal int Count => places.Count;

        internal int Flow => places["flow"].Index;

        internal double FlowFactor => places["flow"].Factor;

        internal int Drop => places["pressure drop"].Index;

        internal double DropFactor => places["pressure drop"].Factor;

        internal bool Set(string name, int index, double factor) => places.TryAdd(name, (index, factor));

        internal IEnumerable<string> Missing() => Names.Where(n => !places.ContainsKey(n));
    }
}
