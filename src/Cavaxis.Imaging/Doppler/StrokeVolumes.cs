using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Doppler;

/// <summary>Stroke volume and output from the outflow tract: π/4 d² × integral, and that times the rate.</summary>
public static class StrokeVolumes
{
    /// <summary>Stroke volume, mL. The diameter counts twice in the error: σ² / SV² = (σ(VTI)/VTI)² + (2 σ(d)/d)².</summary>
    /// <param name="integral">Velocity-time integral, cm.</param>
    /// <param name="diameter">Diameter of the outflow tract, mm.</param>
    /// <returns>The volume of a beat.</returns>
    /// <exception cref="InputFaultException">Other measurements than those, or a diameter that no outflow tract has.</exception>
    public static ImageMeasurement Of(ImageMeasurement integral, ImageMeasurement diameter)
    {
        Require(integral, MeasurementKind.VelocityTimeIntegral, "integral");
        Require(diameter, MeasurementKind.Distance, "diameter");
        return Of(integral, diameter.Value, Joined(integral, diameter), [.. integral.Remarks, .. diameter.Remarks]);
    }

    /// <summary>The same with a diameter that was measured elsewhere.</summary>
    /// <param name="integral">Velocity-time integral, cm.</param>
    /// <param name="diameterMm">Diameter of the outflow tract, mm.</param>
    /// <returns>The volume of a beat; it says that the diameter was given.</returns>
    /// <exception cref="InputFaultException">Another measurement than that, or a diameter that no outflow tract has.</exception>
    public static ImageMeasurement Of(ImageMeasurement integral, Estimate diameterMm)
    {
        Require(integral, MeasurementKind.VelocityTimeIntegral, "integral");
        ArgumentNullException.ThrowIfNull(diameterMm);
        return Of(integral, diameterMm, integral.Provenance, [.. integral.Remarks, "The diameter of the outflow tract was given by a person, not measured on this image."]);
    }

    /// <summary>Output, L/min.</summary>
    /// <param name="volume">Stroke volume, mL.</param>
    /// <param name="rate">Beats a minute.</param>
    /// <returns>Volume times rate.</returns>
    /// <exception cref="InputFaultException">Other measurements than those.</exception>
    public static ImageMeasurement Output(ImageMeasurement volume, ImageMeasurement rate)
    {
        Require(volume, MeasurementKind.StrokeVolume, "volume");
        Require(rate, MeasurementKind.BeatRate, "rate");
        double output = volume.Value.Value * rate.Value.Value / 1000;
        double relative = Math.Sqrt(Square(volume.Value.Sd / Math.Max(1e-9, volume.Value.Value)) + Square(rate.Value.Sd / rate.Value.Value));
        return new ImageMeasurement(MeasurementKind.Output, Estimate.Normal(output, output * relative, Origin.Calculated), "L/min", volume.Provenance, volume.Remarks);
    }

    private static ImageMeasurement Of(ImageMeasurement integral, Estimate diameterMm, MeasurementProvenance provenance, ImmutableArray<string> remarks)
    {
        double mm = Quantities.Faults.Require.InRange(diameterMm.Value, 4, 40, "diameter.mm", "Measure the outflow tract, inner edge to inner edge, in middle systole.");
        double areaCm2 = Math.PI / 4 * mm * mm / 100;
        double volume = areaCm2 * integral.Value.Value;
        double relative = Math.Sqrt(Square(integral.Value.Sd / Math.Max(1e-9, integral.Value.Value)) + Square(2 * diameterMm.Sd / mm));
        string circle = string.Create(CultureInfo.InvariantCulture, $"Outflow tract of {mm:F1} mm taken as a circle of {areaCm2:F2} cm²; many are oval and hold more.");
        return new ImageMeasurement(MeasurementKind.StrokeVolume, Estimate.Normal(volume, volume * relative, Origin.Calculated), "mL", provenance, remarks.Add(circle));
    }

    private static MeasurementProvenance Joined(ImageMeasurement integral, ImageMeasurement diameter) => integral.Provenance with
    {
        Frames = integral.Provenance.Frames.AddRange(diameter.Provenance.Frames),
        Points = integral.Provenance.Points.AddRange(diameter.Provenance.Points),
        Calibration = $"{integral.Provenance.Calibration} Diameter: {diameter.Provenance.Calibration}",
    };

    private static void Require(ImageMeasurement measurement, MeasurementKind kind, string field)
    {
        ArgumentNullException.ThrowIfNull(measurement);
        if (measurement.Kind != kind)
        {
            throw new InputFaultException(new InputFault(FaultCode.WrongKind, field, measurement.Kind.ToString(), kind.ToString(), "Give the measurement of that kind."));
        }
    }

    private static double Square(double x) => x * x;
}
