namespace Cavaxis.Planning.Case;

/// <summary>Cardiac findings.</summary>
public sealed record HeartSection
{
    /// <summary>LVOT diameter, mm.</summary>
    [Meaning("Diameter of the left ventricular outflow tract, mm.")]
    [Number(4, 40, "mm", UsualSd = 1)]
    public Measurement? LvotDiameterMm { get; init; }

    /// <summary>LVOT velocity-time integral, cm.</summary>
    [Meaning("Velocity-time integral in the left ventricular outflow tract, cm.")]
    [Number(0, 50, "cm", UsualSd = 1)]
    public Measurement? LvotVtiCm { get; init; }

    /// <summary>Heart rate, per minute.</summary>
    [Meaning("Heart rate, per minute; 0 in arrest.")]
    [Number(0, 300, "/min", UsualSd = 2)]
    public Measurement? RatePerMin { get; init; }

    /// <summary>Left ventricular ejection fraction, percent.</summary>
    [Meaning("Left ventricular ejection fraction, percent.")]
    [Number(0, 90, "%", UsualSd = 6)]
    public Measurement? EjectionFractionPercent { get; init; }

    /// <summary>Cardiac output, L/min, where measured another way.</summary>
    [Meaning("Cardiac output by another method, L/min; calculated from outflow tract, VTI and rate when left out.")]
    [Number(0, 20, "L/min", UsualSd = 0.6)]
    public Measurement? CardiacOutputLPerMin { get; init; }

    /// <summary>Mean arterial pressure, mmHg.</summary>
    [Meaning("Mean arterial pressure, mmHg.")]
    [Number(5, 200, "mm[Hg]", UsualSd = 3)]
    public Measurement? MeanArterialPressureMmHg { get; init; }

    /// <summary>Central venous pressure, mmHg.</summary>
    [Meaning("Central venous pressure, mmHg.")]
    [Number(-5, 50, "mm[Hg]", UsualSd = 2)]
    public Measurement? CentralVenousPressureMmHg { get; init; }

    /// <summary>Right ventricular dysfunction.</summary>
    [Meaning("Right ventricular dysfunction.")]
    public Severity RightVentricularDysfunction { get; init; }

    /// <summary>Aortic regurgitation.</summary>
    [Meaning("Aortic regurgitation.")]
    public Severity AorticRegurgitation { get; init; }

    /// <summary>Mitral regurgitation.</summary>
    [Meaning("Mitral regurgitation.")]
    public Severity MitralRegurgitation { get; init; }

    /// <summary>Tricuspid regurgitation.</summary>
    [Meaning("Tricuspid regurgitation.")]
    public Severity TricuspidRegurgitation { get; init; }
}
