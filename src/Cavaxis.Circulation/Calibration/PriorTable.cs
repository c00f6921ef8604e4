using Cavaxis.Circulation.Parameters;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Calibration;

/// <summary>The parameters that calibration can fit, with their spread before any reading.</summary>
public static class PriorTable
{
    /// <summary>All that can be fitted.</summary>
    public static IReadOnlyList<PriorSpread> All { get; } =
    [
        Logarithmic(LeftVentricleElastanceMmHgPerMl, 0.5, "contractility of the left ventricle", "between a failing and a stimulated ventricle of one presentation a factor of about five"),
        Logarithmic(LeftVentricleStiffnessPerMl, 0.25, "stiffness of the left ventricle", "end-diastolic curves of one presentation differ by about a quarter in their exponent"),
        Logarithmic(RightVentricleElastanceMmHgPerMl, 0.45, "contractility of the right ventricle", "as for the left, somewhat narrower"),
        Logarithmic(SystemicResistanceMmHgSPerMl, 0.4, "systemic resistance", "from vasoplegia to vasoconstriction a factor of about four within nine tenths"),
        Logarithmic(PulmonaryResistanceMmHgSPerMl, 0.5, "pulmonary resistance", "from normal to clearly raised a factor of about five within nine tenths"),
        Logarithmic(BloodVolumeMl, 0.09, "blood volume", "a tenth of blood volume is about half of the stressed volume"),
        Logarithmic(DescendingComplianceMlPerMmHg, 0.35, "arterial compliance", "halves between youth and old age", AscendingComplianceMlPerMmHg, ArchComplianceMlPerMmHg),
        new(ShuntFraction, ScaleKind.Logit, 1, [], "shunt through the lungs", Reason("from a third to three times the odds: about 0.13 to 0.73 around 0.4")),
        Logarithmic(OxygenConsumptionMlPerMin, 0.2, "oxygen consumption", "sedation and cooling lower, fever and work of breathing raise it by a third", CarbonDioxideProductionMlPerMin),
        Logarithmic(HaemoglobinGPerDl, 0.2, "haemoglobin", "between transfusion threshold and normal"),
        Logarithmic(AlveolarVentilationLPerMin, 0.35, "alveolar ventilation", "dead space of sick lungs is not seen from the ventilator"),
        Logarithmic(JetMixing, 0.7, "mixing in the right atrium", "published recirculation at the same ports spreads by half of its value", AtrialMixingMlPerS),
        Logarithmic(DrainageQuadraticMmHgPerLPerMin2, 0.25, "drop of the drainage cannula", "bench drop against the drop in blood and in place, with kinks and clot", DrainageLinearMmHgPerLPerMin),
        Logarithmic(ReturnQuadraticMmHgPerLPerMin2, 0.25, "drop of membrane lung and return cannula", "bench drop against the drop in blood and in place, with clot in the membrane lung", ReturnLinearMmHgPerLPerMin),
    ];

    /// <summary>The prior spread of a parameter.</summary>
    /// <param name="parameter">The parameter.</param>
    /// <returns>Its spread.</returns>
    /// <exception cref="InputFaultException">This parameter is not among those that can be fitted.</exception>
    public static PriorSpread Of(CirculationParameter parameter) =>
        All.FirstOrDefault(p => p.Parameter == parameter) ?? throw new InputFaultException(new InputFault(
            FaultCode.NotAChoice,
            "fitted",
            ParameterTable.Of(parameter).Name,
            string.Join(", ", All.Select(static p => ParameterTable.Of(p.Parameter).Name)),
            "Fit only parameters of this list; give the others a value."));

    /// <summary>The parameters that can make a difference to a patient: those of the circuit only with a circuit, mixing only with venous return.</summary>
    /// <param name="patient">The patient.</param>
    /// <param name="haemoglobinUnknown">True where haemoglobin is to be fitted too.</param>
    /// <returns>Their spreads, in the order of the table.</returns>
    public static IReadOnlyList<PriorSpread> For(CirculationParameters patient, bool haemoglobinUnknown)
    {
        ArgumentNullException.ThrowIfNull(patient);
        bool circuit = patient[CircuitOn] > 0;
        bool venous = circuit && patient[ArterialShareOfReturn] < 1;
        return [.. All.Where(p => p.Parameter switch
        {
            HaemoglobinGPerDl => haemoglobinUnknown,
            JetMixing => venous,
            DrainageQuadraticMmHgPerLPerMin2 or ReturnQuadraticMmHgPerLPerMin2 => circuit,
            _ => true,
        })];
    }

    private static PriorSpread Logarithmic(
        CirculationParameter parameter, double sd, string words, string reason, params CirculationParameter[] followers) =>
        new(parameter, ScaleKind.Logarithm, sd, followers, words, Reason(reason));

    private static Source Reason(string reason) => new(reason, Certainty.Assumption);
}
