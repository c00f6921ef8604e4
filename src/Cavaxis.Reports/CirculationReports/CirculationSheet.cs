using Cavaxis.Planning.Running;
using Cavaxis.Reports.Charts;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.CirculationReports;

/// <summary>One sheet of charts of a settled circulation: pressures, pressure-volume loops, flows, oxygen along the breath, and the run over time.</summary>
public static class CirculationSheet
{
    private const double OrdinaryHeightMm = 78;

    /// <summary>Draws the sheet.</summary>
    /// <param name="result">A settled result.</param>
    /// <returns>The drawing.</returns>
    /// <exception cref="ArgumentException">The circulation has not settled.</exception>
    public static Drawing Of(CirculationResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (result is not { Breath: { } breath, LeftVentricleLoop: { } left, RightVentricleLoop: { } right })
        {
            throw new ArgumentException("A circulation that has not settled has no numbers to draw.", nameof(result));
        }

        List<Drawing> charts = [Pressures(breath), Loops(left, right), Flows(result, breath)];
        if (result.Patient.Circuit is not null)
        {
            charts.Add(Circuit(breath));
        }

        if (result.Recirculation is not null)
        {
            charts.Add(Recirculation(breath));
        }

        if (result.OverTime is { } run)
        {
            charts.Add(OverTime(run));
        }

        string title = $"{result.CaseTitle}{(result.Invented ? "  [INVENTED CASE]" : string.Empty)}";
        string changes = result.Changes.Count == 0
            ? "As the case is."
            : "Changed: " + string.Join("; ", result.Changes.Select(static c => FormattableString.Invariant($"{c.Name} {c.From:G4} to {c.To:G4} {c.Unit}"))) + ".";
        return DrawingSheet.Of(title, [title, $"Calculated by the model of the circulation{(result.Calibrated ? ", fitted to the readings" : string.Empty)}. {changes}", result.Caution], charts);
    }

    private static Drawing Pressures(WaveformSet breath) => Chart(
        "Pressures over one breath", "Pressure", "mmHg", breath,
        ("arterial", "arterialPressure"), ("left ventricle", "leftVentricularPressure"), ("pulmonary artery", "pulmonaryArteryPressure"), ("right atrium", "rightAtrialPressure"));

    private static Drawing Flows(CirculationResult result, WaveformSet breath)
    {
        (string, string)[] native = [("aortic valve", "aorticValveFlow"), ("tricuspid valve", "tricuspidFlow"), ("inferior cava", "inferiorCavaFlow")];
        return Chart("Flows over one breath", "Flow", "L/min", breath, result.Patient.Circuit is null ? native : [.. native, ("pump", "circuitFlow")]);
    }

    private static Drawing Circuit(WaveformSet breath) => Chart(
        "Circuit pressures over one breath", "Pressure", "mmHg", breath, ("before the pump", "inletPressure"), ("after the pump", "outletPressure"));

    private static Drawing Recirculation(WaveformSet breath)
    {
        double[] percent = [.. Values(breath, "recirculation").Select(static v => 100 * v)];
        return new LineChart(
                "Recirculation over one breath", FormattableString.Invariant($"Share of returned blood in the blood drained, {percent.Min():F0} to {percent.Max():F0} % within the breath."),
                new ChartAxis("Time", "s"), new ChartAxis("Recirculation", "%", Low: 0))
            .With(new ChartSeries("returned blood in the drained", Points(breath, percent)))
            .Build();
    }

    private static Drawing Loops(PressureVolumeLoop left, PressureVolumeLoop right) => new LineChart(
            "Pressure-volume loops of the ventricles", FormattableString.Invariant($"Left ventricle {left.VolumeMl.Min():F0} to {left.VolumeMl.Max():F0} mL, right ventricle {right.VolumeMl.Min():F0} to {right.VolumeMl.Max():F0} mL."),
            new ChartAxis("Volume", "mL", Low: 0), new ChartAxis("Pressure", "mmHg"))
        .With(new ChartSeries("left ventricle", Closed(left)))
        .With(new ChartSeries("right ventricle", Closed(right)))
        .Build();

    private static Drawing OverTime(WaveformSet run) => Chart(
        "Over time, from the moment of the changes on", "Pressure", "mmHg", run, ("arterial", "arterialPressure"), ("right atrium", "rightAtrialPressure"), ("pulmonary artery", "pulmonaryArteryPressure"));

    private static Drawing Chart(string title, string quantity, string unit, WaveformSet set, params (string Words, string Name)[] lines)
    {
        LineChart chart = new(title, Words(title, unit, set, lines), new ChartAxis("Time", "s"), new ChartAxis(quantity, unit)) { HeightMm = OrdinaryHeightMm };
        foreach ((string words, string name) in lines)
        {
            chart = chart.With(new ChartSeries(words, Points(set, Values(set, name))));
        }

        return chart.Build();
    }

    private static string Words(string title, string unit, WaveformSet set, (string Words, string Name)[] lines) => title + ": " + string.Join("; ", lines.Select(line =>
    {
        IReadOnlyList<double> values = Values(set, line.Name);
        return FormattableString.Invariant($"{line.Words} {values.Min():F1} to {values.Max():F1} {unit}");
    })) + ".";

    private static IReadOnlyList<double> Values(WaveformSet set, string name) => set.Signals.Single(s => s.Name == name).Values;

    private static ChartPoint[] Points(WaveformSet set, IReadOnlyList<double> values)
    {
        // More points than a third of a millimetre apart cannot be seen.
        int stride = Math.Max(1, values.Count / 1500);
        return [.. Enumerable.Range(0, (values.Count + stride - 1) / stride).Select(i => new ChartPoint(i * stride * set.SpacingS, values[i * stride]))];
    }

    private static ChartPoint[] Closed(PressureVolumeLoop loop) =>
        [.. loop.VolumeMl.Select((v, i) => new ChartPoint(v, loop.PressureMmHg[i])), new ChartPoint(loop.VolumeMl[0], loop.PressureMmHg[0])];
}
