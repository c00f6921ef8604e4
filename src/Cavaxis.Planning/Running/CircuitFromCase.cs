using System.Globalization;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Devices.MembraneLungs;
using Cavaxis.Devices.Pumps;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Circuit;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Planning.Running;

/// <summary>Pump, membrane lung, cannulae and settings of the running circuit.</summary>
internal static class CircuitFromCase
{
    private const double AssumedFlowPerMinPerKg = 0.06;
    private const double AssumedArterialShare = 0.5;
    private const double BothSides = 2;

    /// <summary>Reads the section.</summary>
    /// <param name="file">The case.</param>
    /// <param name="catalogue">Devices.</param>
    /// <param name="reading">The numbers of planning.</param>
    /// <param name="book">Takes the numbers.</param>
    /// <returns>The parts, or null when nothing runs.</returns>
    public static CircuitParts? Read(CaseFile file, DeviceCatalogue catalogue, PatientReading reading, ParameterBook book)
    {
        RunningSection running = file.Running;
        Unloading(running, book);
        if (running.Configuration is not RunningConfiguration configuration)
        {
            return null;
        }

        double flow = Flow(file, book);
        Fluid blood = new(reading.DensityKgPerM3, reading.Picture.BloodViscosityMPaS.Value * 1e-3);
        CircuitModel model = new(flow, catalogue, blood, reading.Picture, RuleBookReader.BuiltIn);
        CentrifugalPump pump = running.Pump is string p ? catalogue.FindPump(p) ?? throw Unknown("running.pump", p) : model.Pump;
        MembraneLung lung = running.MembraneLung is string l ? catalogue.FindMembraneLung(l) ?? throw Unknown("running.membraneLung", l) : model.Lung;
        if (running.Pump is null || running.MembraneLung is null)
        {
            book.Assume("running.pump, running.membraneLung", $"{pump.Id}, {lung.Id}: the smallest of the catalogue for this flow", "pump speed, pressures, gas transfer");
        }

        double arterial = ArterialShare(running, configuration, book);
        CannulaSet set = CannulaSet.Of(running, configuration, flow, arterial, catalogue, blood, book);
        DropFit drainage = DropFit.Around(flow, q => set.DrainageMmHg(q) + model.TubingDropMmHg(q));
        DropFit back = DropFit.Around(flow, q => set.ReturnMmHg(q) + model.TubingDropMmHg(q) + (lung.DropPa(q, blood) / UnitFactors.PascalsPerMmHg));
        const string Parts = "running.cannulae";
        book.Take(DrainageLinearMmHgPerLPerMin, drainage.LinearMmHgPerLPerMin, Parts, Origin.Calculated);
        book.Take(DrainageQuadraticMmHgPerLPerMin2, drainage.QuadraticMmHgPerLPerMin2, Parts, Origin.Calculated);
        book.Take(ReturnLinearMmHgPerLPerMin, back.LinearMmHgPerLPerMin, Parts, Origin.Calculated);
        book.Take(ReturnQuadraticMmHgPerLPerMin2, back.QuadraticMmHgPerLPerMin2, Parts, Origin.Calculated);
        Pump(running, pump, flow, book);
        Lung(running, lung, flow, book);
        double lineMl = Math.PI / 4 * model.Tubing.InnerDiameterMm * model.Tubing.InnerDiameterMm * model.Tubing.LengthM;
        book.Guess(DrainageLineMl, lineMl + set.DrainageMl);
        book.Guess(ReturnLineMl, lineMl + set.ReturnMl);
        book.Guess(CircuitInertanceMmHgS2PerMl, Inertance(model, reading.DensityKgPerM3) + set.InertanceMmHgS2PerMl(reading.DensityKgPerM3));
        book.Take(CircuitOn, 1, "running.configuration");
        book.Take(ArterialShareOfReturn, arterial, "running.arterialShareOfReturn", Origin.Calculated);
        book.Take(AscendingShareOfArterialReturn, Ascending(running, configuration, book), "running.configuration", Origin.Calculated);
        RunningPorts ports = new(configuration, AxisFromCase.Distribution(file, reading.Habitus), blood, book);
        book.Take(ports.Of(set.Draining(flow), set.Returning(flow)));
        return new CircuitParts(pump.Id, pump.ReferenceSpeedRpm, lung.Id, set.Names, ports.Tips, drainage, back);
    }

    private static double Flow(CaseFile file, ParameterBook book)
    {
        if (file.Running.FlowLPerMin is { } given)
        {
            return given.Value;
        }

        double assumed = file.Support.FlowLPerMin ?? AssumedFlowPerMinPerKg * book.Parameters.MassKg;
        if (file.Running.SpeedPerMin is null)
        {
            book.Assume("running.flowLPerMin", FormattableString.Invariant($"{assumed:F1} L/min"), "everything on support");
        }

        return assumed;
    }

    private static double ArterialShare(RunningSection running, RunningConfiguration configuration, ParameterBook book)
    {
        if (configuration is not RunningConfiguration.VavFemoral)
        {
            return configuration is RunningConfiguration.VaFemoral or RunningConfiguration.VaAxillary ? 1 : 0;
        }

        if (running.ArterialShareOfReturn is { } share)
        {
            return share.Value;
        }

        book.Assume("running.arterialShareOfReturn", FormattableString.Invariant($"{AssumedArterialShare:F2}"), "share of the flow to the artery");
        return AssumedArterialShare;
    }

    private static double Ascending(RunningSection running, RunningConfiguration configuration, ParameterBook book)
    {
        if (configuration != RunningConfiguration.VaAxillary)
        {
            return 0;
        }

        RunningCannula? arterial = running.Cannulae.FirstOrDefault(c => c.Role == CannulaRole.ArterialReturn);
        if (arterial?.Side is Anatomy.Body.BodySide.Left)
        {
            book.Assume("left axillary return", "half of it before, half beyond the arch: the circulation has no port in between", "saturation of arms and brain");
            return 0.5;
        }

        if (arterial?.Side is null)
        {
            book.Assume("running.cannulae.side", "right axillary artery", "saturation of arms and brain");
        }

        return 1;
    }

    private static void Pump(RunningSection running, CentrifugalPump pump, double flow, ParameterBook book)
    {
        Device(DeviceNumber.Of(pump), "running.pump", book);
        book.Take(TargetFlowLPerMin, flow, "running.flowLPerMin", running.FlowLPerMin is null ? Origin.Estimated : Origin.Measured);
        if (running.SpeedPerMin is { } speed)
        {
            book.Take(PumpSpeedRatio, speed.Value / pump.ReferenceSpeedRpm, "running.speedPerMin");
        }

        if (running.FlowLPerMin is null && running.SpeedPerMin is not null)
        {
            book.Take(FlowControlPerS, 0, "running.speedPerMin");
        }
    }

    private static void Lung(RunningSection running, MembraneLung lung, double flow, ParameterBook book)
    {
        Device(DeviceNumber.Of(lung), "running.membraneLung", book);
        if (running.SweepLPerMin is { } sweep)
        {
            book.Take(SweepLPerMin, sweep.Value, "running.sweepLPerMin");
        }
        else
        {
            book.Guess(SweepLPerMin, flow, Origin.Estimated);
            book.Assume("running.sweepLPerMin", FormattableString.Invariant($"{flow:F1} L/min, as the pump flow"), "carbon dioxide");
        }

        if (running.SweepOxygenFraction is { } fraction)
        {
            book.Take(SweepOxygenFraction, fraction.Value, "running.sweepOxygenFraction");
        }
        else
        {
            book.Assume("running.sweepOxygenFraction", "1.00", "oxygen after the membrane lung");
        }
    }

    private static void Device(DeviceNumber[] numbers, string field, ParameterBook book)
    {
        foreach (DeviceNumber number in numbers)
        {
            if (number.Decides)
            {
                book.Take(number.Parameter, number.Value, field, Origin.Calculated);
            }
            else
            {
                book.Guess(number.Parameter, number.Value);
            }
        }
    }

    private static void Unloading(RunningSection running, ParameterBook book)
    {
        if (running.BalloonPumpMl is double balloon)
        {
            book.Take(BalloonVolumeMl, balloon, "running.balloonPumpMl");
        }

        if (running.VentFlowLPerMin is double vent)
        {
            book.Take(VentFlowLPerMin, vent, "running.ventFlowLPerMin");
        }

        if (running.TransvalvularFlowLPerMin is double across)
        {
            book.Take(TransvalvularFlowLPerMin, across, "running.transvalvularFlowLPerMin");
        }

        if (running.SeptalOpeningMm is double opening)
        {
            book.Take(SeptalOpeningCm2, Math.PI / 400 * opening * opening, "running.septalOpeningMm", Origin.Calculated);
        }
    }

    /// <summary>ρ L/A of the tubing on both sides, in mmHg s²/mL.</summary>
    private static double Inertance(CircuitModel model, double density)
    {
        double area = Math.PI / 4 * model.Tubing.InnerDiameterMm * model.Tubing.InnerDiameterMm * 1e-6;
        return BothSides * density * model.Tubing.LengthM / area / UnitFactors.PascalsPerMmHg * 1e-6;
    }

    private static InputFaultException Unknown(string field, string id) => new(new InputFault(
        FaultCode.NotFound, field, InputFault.Shown(id), "the identifier of a device in the catalogue",
        string.Create(CultureInfo.InvariantCulture, $"List the catalogue and choose one, or leave the field out.")));
}
