using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Oxygen;

/// <summary>
/// The two constants of the oxygen content equation. Schools differ on both, so a programme can set its own; the
/// published choices and what they change are shown in <c>docs/models/blood.md</c>.
/// </summary>
public sealed record BloodConstants
{
    /// <summary>1.34 mL/g and 0.0031 mL/dL/mmHg.</summary>
    public static BloodConstants Default { get; } = new();

    /// <summary>Oxygen bound by one gram of fully saturated haemoglobin (Hüfner's number), mL/g at standard conditions.</summary>
    /// <exception cref="InputFaultException">Outside 1.30 to 1.40.</exception>
    public double HuefnerMlPerG
    {
        get;
        init => field = Require.InRange(
            value, 1.30, 1.40, "huefnerMlPerG", "Published values lie between 1.32 and 1.39 mL/g.");
    }

    = 1.34;

    /// <summary>Oxygen dissolved in blood at 37 °C, mL/dL/mmHg at standard conditions.</summary>
    /// <exception cref="InputFaultException">Outside 0.0025 to 0.0040.</exception>
    public double OxygenSolubilityMlPerDlPerMmHg
    {
        get;
        init => field = Require.InRange(
            value, 0.0025, 0.0040, "oxygenSolubilityMlPerDlPerMmHg", "Published values lie between 0.0030 and 0.0032.");
    }

    = 0.0031;

    /// <summary>Where the default constants come from.</summary>
    public static IReadOnlyList<Source> Sources { get; } =
    [
        new("Hüfner's number 1.34 mL/g: anaesthesia teaching text on oxygen content, worked example", Certainty.Seen),
        new(
            "Dijkhuizen et al. 1977, Pflügers Arch 369:223: 1.39 mL/g in theory, 1.368 (SD 0.017) measured in 36 men",
            Certainty.Seen),
        new(
            "0.0031 mL/dL/mmHg: surgical teaching page on the pulmonary artery catheter; 0.003 in other texts",
            Certainty.Seen),
        new(
            "Siggaard-Andersen et al. 1984, Clin Chem 30:1646: 0.0105 mmol/L/kPa at 37 °C, which is 0.00314 mL/dL/mmHg",
            Certainty.Derived),
    ];
}
