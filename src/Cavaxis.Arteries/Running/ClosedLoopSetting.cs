using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Tree;
using Cavaxis.Blood.Rheology;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Quantities;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Arteries.Running;

/// <summary>Sets the closed loop as the request says, and reads off it what the tree needs.</summary>
internal static class ClosedLoopSetting
{
    private const double HaematocritPerGPerDl = 0.03;
    private const double TemperatureC = 37;

    /// <summary>The closed loop with this support.</summary>
    /// <param name="request">The request.</param>
    /// <param name="contractility">Factor on the elastance beside that of the request.</param>
    /// <param name="flow">Factor on the pump flow.</param>
    public static CirculationParameters Of(ArterialSupportRequest request, double contractility = 1, double flow = 1)
    {
        CirculationParameters p = request.Circulation;
        p = p.WithNearest(LeftVentricleElastanceMmHgPerMl, p[LeftVentricleElastanceMmHgPerMl] * request.ContractilityFactor * contractility);
        if (request.Return is null)
        {
            return p.With(CircuitOn, 0);
        }

        // A part that returns to a vein (V-AV) stays; the flow of the request is the part that goes to the artery.
        double share = p[CircuitOn] > 0 && p[ArterialShareOfReturn] > 0 ? p[ArterialShareOfReturn] : 1;
        return p.With(CircuitOn, 1).With(ArterialShareOfReturn, share)
            .With(AscendingShareOfArterialReturn, request.Return.IsFemoral ? 0 : 1)
            .WithNearest(TargetFlowLPerMin, request.PumpFlowLPerMin * flow / share);
    }

    /// <summary>Beds and compliance for the tree.</summary>
    public static BedState Beds(ArterialSupportRequest request, SettledState settled)
    {
        CirculationParameters p = settled.Parameters;
        BreathRecord breath = settled.RequireBreath();
        double pressure = breath.Mean(Signal.AscendingAorticPressure);
        double flow = breath.Mean(Signal.SystemicFlow);
        double behind = Math.Clamp(pressure - (flow / 0.06 * p[SystemicResistanceMmHgSPerMl]), 0, 0.5 * pressure);
        double compliance = p[AscendingComplianceMlPerMmHg] + p[ArchComplianceMlPerMmHg] + p[DescendingComplianceMlPerMmHg];
        double age = request.ComplianceIsPatients ? 1 : TreeScaling.ComplianceForAge(request.Body.AgeYears, ArterialTable.BuiltIn.ReferenceAgeYears);
        double lower = 1 - p[CoronaryShare] - p[UpperShare] - p[SplanchnicShare];
        double haematocrit = Math.Clamp(p[HaemoglobinGPerDl] * HaematocritPerGPerDl, 0.1, 0.65);
        return new BedState(
            pressure * UnitFactors.PascalsPerMmHg, behind * UnitFactors.PascalsPerMmHg, flow * UnitFactors.CubicMetresPerSecondPerLPerMin,
            compliance * age * 1e-6 / UnitFactors.PascalsPerMmHg, p[CoronaryShare], p[UpperShare], p[SplanchnicShare], lower * p[RenalShareOfLower],
            BloodViscosity.PascalSeconds(haematocrit, TemperatureC), BloodDensity.KgPerM3(haematocrit, TemperatureC));
    }

    /// <summary>Contents of the two kinds of blood.</summary>
    public static Oxygenation.BloodPair Blood(SettledState settled, bool supported)
    {
        BreathRecord breath = settled.RequireBreath();
        double native = breath.Mean(Signal.PulmonaryVenousOxygen);
        return new Oxygenation.BloodPair(
            native, supported ? breath.Mean(Signal.PostMembraneOxygen) : native, settled.Parameters[HaemoglobinGPerDl], settled.Parameters[VirtualPo2Factor]);
    }
}
