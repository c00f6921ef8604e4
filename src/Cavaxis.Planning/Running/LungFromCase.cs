using Cavaxis.Blood.Oxygen;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Needs;
using Cavaxis.Quantities;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Planning.Running;

/// <summary>Lungs, breathing and pleural pressure from a case.</summary>
internal static class LungFromCase
{
    private const double MmHgPerCmH2O = 0.73555912;
    private const double DryPressureMmHg = 713;

    // Assumptions of this project, all listed where they are used.
    private const double FailingLungDeadSpace = 0.6;
    private const double WorkingLungDeadSpace = 0.35;
    private const double FailingLungShunt = 0.5;
    private const double SickPatientShunt = 0.12;
    private const double AssumedDrivingCmH2O = 10;
    private const double FullSaturation = 0.995;

    /// <summary>Reads the sections.</summary>
    /// <param name="file">The case.</param>
    /// <param name="reading">The numbers of planning.</param>
    /// <param name="book">Takes the numbers.</param>
    public static void Read(CaseFile file, PatientReading reading, ParameterBook book)
    {
        bool failing = file.Support.Goal is SupportGoal.GasExchange or SupportGoal.Both;
        Oxygen(file, reading, failing, book);
        Pressures(file, failing, book);
        Ventilation(file, reading, failing, book);
        if (file.Obstacles.AbdominalHypertension == Finding.Present)
        {
            book.Guess(AbdominalPressureMmHg, 15, Origin.Estimated);
            book.Assume("abdominal pressure", "15 mmHg, as abdominal hypertension is present", "collapse of the inferior cava");
        }
    }

    private static void Oxygen(CaseFile file, PatientReading reading, bool failing, ParameterBook book)
    {
        double inspired;
        if (file.Ventilation.InspiredOxygenFraction is { } now)
        {
            (inspired, string field) = (now.Value, "ventilation.inspiredOxygenFraction");
            book.Take(InspiredOxygenFraction, inspired, field);
        }
        else if (file.Blood.InspiredOxygenFraction is { } before)
        {
            inspired = before.Value;
            book.Take(InspiredOxygenFraction, inspired, "blood.inspiredOxygenFraction");
        }
        else
        {
            inspired = failing ? 0.6 : file.Support.Goal is null ? 0.21 : 0.4;
            book.Guess(InspiredOxygenFraction, inspired, Origin.Estimated);
            book.Assume("blood.inspiredOxygenFraction", FormattableString.Invariant($"{inspired:F2}"), "oxygen from the lungs");
        }

        if (Shunt(file, reading) is double shunt)
        {
            book.Guess(ShuntFraction, shunt);
            return;
        }

        if (file.Support.Goal is not null)
        {
            shunt = failing ? FailingLungShunt : SickPatientShunt;
            book.Guess(ShuntFraction, shunt, Origin.Estimated);
        }
        else
        {
            shunt = book.Parameters[ShuntFraction];
        }

        book.Assume("blood.arterialSaturationPercent", FormattableString.Invariant($"a shunt of {shunt * 100:F0} %, by what the support is for"), "oxygen from the lungs");
    }

    /// <summary>Shunt by the mixing equation, (C′ − Ca)/(C′ − Cv), from the gas before support; null where a part of it is missing.</summary>
    internal static double? Shunt(CaseFile file, PatientReading reading)
    {
        BloodSection blood = file.Blood;
        if ((blood.InspiredOxygenFraction ?? file.Ventilation.InspiredOxygenFraction)?.Value is not double inspired
            || (blood.ArterialSaturationPercent is null && blood.ArterialPo2MmHg is null))
        {
            return null;
        }

        double haemoglobin = reading.Picture.HaemoglobinGPerDl.Value;
        double pco2 = blood.ArterialPco2MmHg?.Value ?? BloodConditions.StandardPco2MmHg;
        double alveolar = Math.Max(40, (inspired * DryPressureMmHg) - (pco2 / 0.8));
        double full = OxygenContent.FromPo2(haemoglobin, alveolar, reading.Conditions, BloodConstants.Default);
        double arterial = blood.ArterialSaturationPercent is { } s
            ? Content(s.Value / 100, blood.ArterialPo2MmHg?.Value)
            : OxygenContent.FromPo2(haemoglobin, blood.ArterialPo2MmHg!.Value, reading.Conditions, BloodConstants.Default);
        double venous = blood.VenousSaturationPercent is { } v
            ? Content(v.Value / 100, null)
            : arterial - (reading.Picture.OxygenConsumptionMlPerMin.Value / (10 * Math.Max(0.5, reading.Picture.CardiacOutputLPerMin.Value)));
        return full - venous > 0.2 ? Math.Clamp((full - arterial) / (full - venous), 0.01, 0.98) : null;

        double Content(double saturation, double? po2)
        {
            double kept = Math.Min(saturation, FullSaturation);
            return OxygenContent.MlPerDl(haemoglobin, kept, po2 ?? OxygenDissociation.Po2At(kept, reading.Conditions), BloodConstants.Default);
        }
    }

    private static void Pressures(CaseFile file, bool failing, ParameterBook book)
    {
        VentilationSection v = file.Ventilation;
        VentilationMode mode = v.Mode;
        if (mode == VentilationMode.Unknown)
        {
            mode = file.Support.Goal is null && v.PeepCmH2O is null ? VentilationMode.Spontaneous : VentilationMode.Controlled;
            book.Assume("ventilation.mode", mode == VentilationMode.Controlled ? "the ventilator moves the chest" : "the patient breathes alone", "venous return over the breath");
        }

        if (v.RatePerMin is { } rate)
        {
            book.Take(BreathsPerMin, rate.Value, "ventilation.ratePerMin");
        }
        else
        {
            book.Assume("ventilation.ratePerMin", FormattableString.Invariant($"{book.Parameters[BreathsPerMin]:F0} /min for this size"), "length of the breath");
        }

        double peep = v.PeepCmH2O?.Value ?? (mode == VentilationMode.Controlled ? (failing ? 10 : 5) : 0);
        if (v.PeepCmH2O is null)
        {
            book.Assume("ventilation.peepCmH2O", FormattableString.Invariant($"{peep:F0} cmH2O"), "venous return, right heart");
            book.Guess(PeepCmH2O, peep, Origin.Estimated);
        }
        else
        {
            book.Take(PeepCmH2O, peep, "ventilation.peepCmH2O");
        }

        double swing = book.Parameters[PleuralSwingMmHg];
        if (mode == VentilationMode.Controlled)
        {
            double? driving = v.DrivingPressureCmH2O?.Value ?? (v.PlateauPressureCmH2O is { } plateau ? Math.Max(0, plateau.Value - peep) : null);
            if (driving is null)
            {
                book.Assume("ventilation.drivingPressureCmH2O", FormattableString.Invariant($"{AssumedDrivingCmH2O:F0} cmH2O"), "venous return over the breath");
            }

            double given = driving ?? AssumedDrivingCmH2O;
            book.Take(AlveolarSwingCmH2O, given, "ventilation.drivingPressureCmH2O", driving is null ? Origin.Estimated : Origin.Measured);
            swing = book.Parameters[PleuralTransmission] * given * MmHgPerCmH2O;
        }

        if (v.PleuralSwingMmHg is { } measured)
        {
            book.Take(PleuralSwingMmHg, measured.Value, "ventilation.pleuralSwingMmHg");
        }
        else
        {
            book.Guess(PleuralSwingMmHg, swing, mode == VentilationMode.Controlled ? Origin.Calculated : Origin.Estimated);
        }
    }

    /// <summary>Alveolar ventilation: on support from tidal volume and rate, else from the arterial tension, 863 · production over tension.</summary>
    private static void Ventilation(CaseFile file, PatientReading reading, bool failing, ParameterBook book)
    {
        bool running = file.Running.Configuration is not null;
        double deadSpace = failing ? FailingLungDeadSpace : WorkingLungDeadSpace;
        if (file.Ventilation.TidalVolumeMl is { } tidal && (running || file.Blood.ArterialPco2MmHg is null))
        {
            book.Guess(AlveolarVentilationLPerMin, book.Parameters[BreathsPerMin] * tidal.Value * (1 - deadSpace) / 1000);
            book.Assume("dead space", FormattableString.Invariant($"{deadSpace * 100:F0} % of the tidal volume"), "carbon dioxide by the lungs");
            return;
        }

        if (file.Blood.ArterialPco2MmHg is { } pco2)
        {
            book.Guess(AlveolarVentilationLPerMin, 0.863 * reading.Picture.CarbonDioxideProductionMlPerMin.Value / pco2.Value);
            if (running)
            {
                book.Assume("ventilation.tidalVolumeMl", "alveolar ventilation as before support", "carbon dioxide by the lungs");
            }

            return;
        }

        double usual = 0.863 * reading.Picture.CarbonDioxideProductionMlPerMin.Value / (failing ? 60 : 40);
        book.Guess(AlveolarVentilationLPerMin, usual, Origin.Estimated);
        book.Assume(
            "blood.arterialPco2MmHg", FormattableString.Invariant($"alveolar ventilation of {usual:F1} L/min, which gives {(failing ? 60 : 40)} mmHg without support"), "carbon dioxide");
    }
}
