using System.Globalization;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Circuit;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Devices.Pumps;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>Reference rows of the device room: friction, single losses, pumps, membrane lungs and wires. Whole cannulae: <see cref="DeviceCannulaChecks"/>.</summary>
public sealed class DeviceChecks : IReferenceChecks
{
    private static readonly Fluid Blood = new(1060, 3e-3);
    private static readonly Source Definition = new("Definition: one French is a third of a millimetre of outer diameter", Certainty.ClosedForm);
    private static readonly Source Poiseuille = new("Hagen and Poiseuille, exact laminar flow in a round tube", Certainty.ClosedForm);
    private static readonly Source Library = new("Bell, open chemical-engineering library, test values of its friction module", Certainty.Seen);
    private static readonly Source Crane = new("Crane Technical Paper 410, worked examples quoted in a public notebook", Certainty.SeenSecondHand);
    private static readonly Source White = new("White, Fluid Mechanics, example 6.7 (oil in a cast-iron pipe), quoted in a study page", Certainty.SeenSecondHand);
    private static readonly Source Tables = new("International Critical Tables, water, printed in an encyclopedia's appendix", Certainty.Seen);
    private static readonly Source Wires = new("Harrison et al. 2011, J Endovasc Ther 18:797: modulus seen, EI by arithmetic with the nominal diameter", Certainty.Derived);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows() =>
        [.. Tubes(), .. SingleLosses(), .. CircuitParts()];

    private static IEnumerable<ValidationRow> Tubes()
    {
        yield return Row("Outer diameter of a 21 Fr cannula", Definition, 7, DeviceCatalogue.BuiltIn.Cannula("drain-multi-21fr-55cm").OuterDiameterMm, "mm", 1e-12);
        yield return Row("Friction factor at Re 1000, laminar", Poiseuille, 0.064, TubeFriction.DarcyFactor(1000), "1", 0.005);
        Tubing slow = new(9.525, 1);
        const double Flow = 0.2;
        double laminar = 128 * Blood.ViscosityPaS * Flow / 60000 / (Math.PI * Math.Pow(9.525e-3, 4));
        yield return Row("Drop of 1 m of 3/8 in tubing at 0.2 L/min and 3 mPa s", Poiseuille, laminar, slow.DropPa(Flow, Blood), "Pa", 0.005);
        yield return Row("Friction factor at Re 10 000, smooth (Blasius)", Library, 0.03164, TubeFriction.DarcyFactor(1e4), "1", 0.005);
        yield return Row("Friction factor at Re 100 000, smooth (Prandtl and von Karman)", Library, 0.01798977308427384, TubeFriction.DarcyFactor(1e5), "1", 0.005);
        yield return Row("Friction factor at Re 100 000, relative roughness 1e-4 (Colebrook)", Library, 0.018513866077471648, TubeFriction.DarcyFactor(1e5, 1e-4), "1", 0.005);
        yield return Row("Friction factor of a smooth plastic pipe at Re 100 600 (example 7-1)", Crane, 0.0179, TubeFriction.DarcyFactor(100_600), "1", 0.006, "Printed with three digits.");
        yield return Row("Friction factor of a rough pipe at Re 128 000, roughness 0.0013", White, 0.0225, TubeFriction.DarcyFactor(128_000, 0.0013), "1", 0.02, "Read from the Moody chart in the source.");
        yield return Row("Friction factor of a rough pipe at Re 274 900, roughness 0.0008 (sequel of example 6.6)", White, 0.01982, TubeFriction.DarcyFactor(274_900, 0.0008), "1", 0.005);
        Source needle = new("OpenStax, College Physics, example 12.8: 0.12 mL/s through a needle of 0.15 mm radius and 2.5 cm, 1 mPa s", Certainty.Seen);
        double fast = 0.12e-6 / (Math.PI * Math.Pow(0.15e-3, 2));
        double factor = TubeFriction.DarcyFactor(1000 * fast * 0.3e-3 / 1e-3);
        yield return Row("Pressure over the needle, 16 200 less 1066 Pa in the vein", needle, 15_134, factor * 0.025 / 0.3e-3 * 500 * fast * fast, "Pa", 0.005);
        Source wang = new("Wang et al. 2015, Artif Organs 39:43: line drop with tubing of three bores, 150 cm, haematocrit 30 %, 35 degC, abstract", Certainty.Seen);
        Fluid thinned = new(1045, 2.6e-3);
        double Over(double wide, double narrow, double litres) =>
            (new Tubing(narrow, 1.5).DropPa(litres, thinned) - new Tubing(wide, 1.5).DropPa(litres, thinned)) / UnitFactors.PascalsPerMmHg;
        const string Viscosity = "Viscosity is not given and is taken as 2.6 mPa s; connectors are in the measured difference.";
        yield return Row("1/8 in less 1/4 in tubing, 150 cm, blood 500 mL/min", wang, 158.3 - 62.1, Over(6.35, 3.175, 0.5), "mmHg", 0.15, Viscosity);
        yield return Row("3/16 in less 1/4 in tubing, 150 cm, blood 500 mL/min", wang, 79.6 - 62.1, Over(6.35, 4.763, 0.5), "mmHg", 0.35, Viscosity);
        yield return Row("3/16 in less 1/4 in tubing, 150 cm, blood 1000 mL/min", wang, 111.6 - 74.0, Over(6.35, 4.763, 1), "mmHg", 0.15, Viscosity);
        foreach ((double celsius, double density, double viscosity) in new[] { (30, 995.68, 0.8004), (37.0, 993.36, 0.6925) })
        {
            Fluid water = Water.At(celsius);
            string at = string.Create(CultureInfo.InvariantCulture, $"water at {celsius} degC");
            yield return Row($"Density of {at}", Tables, density, water.DensityKgPerM3, "kg/m3", 1e-4);
            yield return Row($"Viscosity of {at}", Tables, viscosity, water.ViscosityPaS * 1000, "mPa s", 0.005, "The 1929 tables lie up to 0.6 % above today's standard.");
        }
    }

    private static IEnumerable<ValidationRow> SingleLosses()
    {
        Source maker = new("Crane 410 coefficients as computed by an open library's documentation", Certainty.Seen);
        yield return Row("Step contraction from 3 to 2 diameters", maker, 0.2777777, LossCoefficient.Contraction(4.0 / 9, 180), "1", 1e-5);
        yield return Row("Step expansion to four times the area", maker, 0.5625, LossCoefficient.Expansion(0.25, 180), "1", 1e-9);
        Source orifice = new("Orifice equation v = Cd (2 g h)^(1/2) with the handbook Cd 0.62 for a sharp orifice, reference page", Certainty.Seen);
        Fluid water = Water.At(20);
        yield return Row(
            "Velocity in a 10 mm hole under 1 m of water", orifice, 0.62 * Math.Sqrt(2 * 9.80665),
            Orifice.VelocityMPerS(water.DensityKgPerM3 * 9.80665, 0.01, water), "m/s", 0.005);
        Source sampson = new("Sampson 1891, creeping flow through a hole in a thin wall: 3 mu Q / r^3", Certainty.ClosedForm);
        const double Creep = 1e-8;
        yield return Row(
            "Drop of a 2 mm hole in creeping flow", sampson, 3 * Blood.ViscosityPaS * Math.PI * Creep / 1e-3,
            Orifice.DropPa(Creep, 2e-3, Blood), "Pa", 0.005);
    }

    private static IEnumerable<ValidationRow> CircuitParts()
    {
        // The example's 126 ft at 400 gpm and 3500 rpm; any curve through that point must give its affine image.
        CentrifugalPump pump = new("p", "p", 3500, 150, 0, -1.5, 0, 5000, 8, -100, Crane);
        yield return Row("Head at 1700 rpm of a pump with 126 ft at 400 gpm and 3500 rpm (example 7-33)", Crane, 29.725714285714286, pump.HeadMmHg(1700, 1.9428571428571428), "ft", 1e-9);
        yield return Row("Speed for that head and flow", Crane, 1700, pump.SpeedFor(1.9428571428571428, 29.725714285714286), "rpm", 1e-9);
        Source rating = new("Rating blood 12 g/dL from 75 to 95 %: 1.34 x 12 x 0.20 per decilitre", Certainty.Derived);
        yield return Row("Oxygen per litre at rated flow", rating, 32.16, DeviceCatalogue.BuiltIn.FindMembraneLung("lung-adult")!.Oxygen(7, 12, 0.75, 1).MlPerMin / 7, "mL/L", 1e-9);
        Source gas = new("Ventilation equation V = VCO2 x 713/PCO2 with a perfect membrane, metered dry at 20 degC", Certainty.ClosedForm);
        var perfect = DeviceCatalogue.BuiltIn.FindMembraneLung("lung-adult")! with { CarbonDioxideConductance = 1e12 };
        yield return Row("Sweep for 200 mL/min of CO2 at a mean PCO2 of 45 mmHg", gas, 200 * 713.0 / 45 / 1000 * 293.15 / 273.15, perfect.SweepFor(200, 45) ?? double.NaN, "L/min", 1e-6);
        yield return Row("Bending stiffness of a 0.889 mm wire of 17 GPa", Wires, 521, DeviceCatalogue.BuiltIn.FindWire("wire-0.889mm-17gpa")!.BodyStiffness.LowNMm2, "N mm2", 0.001);
        yield return Row("Bending stiffness of a 0.889 mm wire of 158.4 GPa", Wires, 4857, DeviceCatalogue.BuiltIn.FindWire("wire-0.889mm-158.4gpa")!.BodyStiffness.HighNMm2, "N mm2", 0.001);
    }

    private static ValidationRow Row(string check, Source source, double expected, double got, string unit, double relative, string note = "") =>
        new("Devices", check, source, expected, got, unit, Tolerance.Relative, relative, note);
}
