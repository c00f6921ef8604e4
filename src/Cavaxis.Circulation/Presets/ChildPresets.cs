using System.Collections.Immutable;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Quantities;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Presets;

/// <summary>
/// Children at rest. The adult scaled by mass has adult pressures; a child's arterial pressure is lower. Systemic resistance and left
/// ventricular elastance are both multiplied by the ratio of pressures, so that ejection stays what it was. Blood beyond the
/// adult's per kg lies in the veins without stretching them.
/// </summary>
internal static class ChildPresets
{
    private static readonly Source Pressure = new("age table of arterial pressure in a children's textbook, over the scaled adult's", Certainty.Derived);
    private static readonly Source Volume = new("age table of blood volume in a children's textbook, middle of the range", Certainty.Seen);
    private static readonly Source Share = new("Salim 1995: superior cava 49 % in the newborn, 55 % at 2.5 years, 35 % by 6.6 years", Certainty.Derived);
    private static readonly Source Metabolism = new(
        "6.52 mL/min/kg in newborns (Evans 1978), 4.3 (SD 0.8) in children (Seear); between at one year; production 0.8 of it", Certainty.Derived);

    private static readonly Source Cells = new("haematocrit 45-65 % in the newborn, 35 % at one year (anaesthesia textbook)", Certainty.Derived);

    internal static IEnumerable<CirculationPreset> All() =>
    [
        Child("child-20kg", "Child of about 5 years.", 20, new(0.79, 74.5, 0.38, 4.5, 12)),
        Child("child-10kg", "Child of about 1 year.", 10, new(0.68, 78, 0.53, 5, 11.7)),
        Child("newborn-3.5kg", "Newborn at term.", 3.5, new(0.53, 86, 0.49, 6.52, 16)),
    ];

    private static CirculationPreset Child(string name, string meaning, double massKg, ChildNumbers child)
    {
        CirculationParameters scaled = CirculationParameters.ForMass(massKg);
        double blood = child.BloodMlPerKg * massKg;
        double veins = scaled[UpperVenousZeroVolumeMl] + scaled[SplanchnicZeroVolumeMl] + scaled[LowerVenousZeroVolumeMl];
        double stretch = 1 + ((blood - scaled[BloodVolumeMl]) / veins);
        double wider = scaled[UpperShare] / child.UpperShare;
        PresetChange Times(CirculationParameter parameter, double factor, Source source) => new(parameter, scaled[parameter] * factor, source);
        ImmutableArray<PresetChange> changes =
        [
            Times(SystemicResistanceMmHgSPerMl, child.PressureRatio, Pressure),
            Times(LeftVentricleElastanceMmHgPerMl, child.PressureRatio, Pressure),
            new(BloodVolumeMl, blood, Volume),
            Times(UpperVenousZeroVolumeMl, stretch, Volume),
            Times(SplanchnicZeroVolumeMl, stretch, Volume),
            Times(LowerVenousZeroVolumeMl, stretch, Volume),
            new(UpperShare, child.UpperShare, Share),
            Times(UpperVenousResistanceMmHgSPerMl, wider, Share),
            Times(SuperiorCavaResistanceMmHgSPerMl, wider, Share),
            new(OxygenConsumptionMlPerMin, child.OxygenMlPerMinPerKg * massKg, Metabolism),
            new(CarbonDioxideProductionMlPerMin, 0.8 * child.OxygenMlPerMinPerKg * massKg, Metabolism),
            new(HaemoglobinGPerDl, child.HaemoglobinGPerDl, Cells),
        ];
        return new CirculationPreset(name, meaning, massKg, changes);
    }

    private sealed record ChildNumbers(
        double PressureRatio, double BloodMlPerKg, double UpperShare, double OxygenMlPerMinPerKg, double HaemoglobinGPerDl);
}
