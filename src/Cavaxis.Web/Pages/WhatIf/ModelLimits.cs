using Cavaxis.Circulation.Parameters;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>What the model does not follow, for the changes that were asked.</summary>
internal static class ModelLimits
{
    private static readonly (string Words, Func<CirculationParameters, ReadingFacts, bool> Applies)[] All =
    [
        ("Reflexes: rate and tone of the vessels stay as they are, while those of a patient answer to a change.", static (p, _) => p[ReflexGain] <= 0),
        ("Reflexes: the arterial baroreflex alone is followed; others are not.", static (p, _) => p[ReflexGain] > 0),
        ("Drugs: only the number that was named is changed, while a drug changes several, and by dose and time.", static (_, f) => Asked(f, LeftVentricleElastanceMmHgPerMl, RightVentricleElastanceMmHgPerMl, SystemicResistanceMmHgSPerMl, PulmonaryResistanceMmHgSPerMl, HeartRatePerMin)),
        ("Bleeding, leak into the tissues and urine: volume is given or taken once, as blood like the patient's, and stays.", static (_, f) => Asked(f, BloodVolumeMl)),
        ("Lungs that open or close: the shunt stays as it is when pressures of the ventilator or oxygen change.", static (_, f) => Asked(f, PeepCmH2O, InspiredOxygenFraction)),
        ("Thickness of the blood: drops of pressure in the circuit and vessels stay those of the haemoglobin before.", static (_, f) => Asked(f, HaemoglobinGPerDl)),
        ("Clotting and breaking of red cells at high or low flow.", static (_, f) => Asked(f, TargetFlowLPerMin, PumpSpeedRatio)),
        ("Bleeding, clotting, kidneys, and waves and mixing in the arteries beyond three volumes are not part of the model.", static (_, _) => true),
    ];

    /// <summary>The limits that matter.</summary>
    /// <param name="patient">The patient shown.</param>
    /// <param name="facts">What was asked.</param>
    /// <returns>Sentences.</returns>
    public static IReadOnlyList<string> Of(CirculationParameters patient, ReadingFacts facts) => [.. All.Where(l => l.Applies(patient, facts)).Select(static l => l.Words)];

    private static bool Asked(ReadingFacts facts, params ReadOnlySpan<CirculationParameter> parameters)
    {
        foreach (CirculationParameter parameter in parameters)
        {
            if (facts.AskedWay(parameter) != Sense.Same)
            {
                return true;
            }
        }

        return false;
    }
}
