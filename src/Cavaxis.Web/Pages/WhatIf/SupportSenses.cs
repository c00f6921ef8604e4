using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>Reads the sense of the support from the numbers of a patient, and what goes with it.</summary>
internal static class SupportSenses
{
    /// <summary>The sense.</summary>
    /// <param name="patient">The numbers.</param>
    public static SupportSense Of(CirculationParameters patient) => patient[CirculationParameter.CircuitOn] <= 0 ? SupportSense.None
        : patient[CirculationParameter.ArterialShareOfReturn] switch
        {
            <= 0 => SupportSense.Venous,
            >= 1 => SupportSense.Arterial,
            _ => SupportSense.Both,
        };

    /// <summary>The one number that matters.</summary>
    /// <param name="sense">The sense.</param>
    public static CirculationQuantity Key(SupportSense sense) => sense switch
    {
        SupportSense.Venous => CirculationQuantity.RecirculationPercent,
        SupportSense.Arterial or SupportSense.Both => CirculationQuantity.AorticValveOpenPercent,
        _ => CirculationQuantity.MeanArterialPressureMmHg,
    };

    /// <summary>Key of its explanation in the help.</summary>
    /// <param name="sense">The sense.</param>
    public static string Term(SupportSense sense) => sense switch
    {
        SupportSense.Venous => "recirculation",
        SupportSense.Arterial or SupportSense.Both => "aortic-valve",
        _ => "mean-arterial-pressure",
    };

    /// <summary>Whether blood returns to a vein.</summary>
    /// <param name="sense">The sense.</param>
    public static bool HasVenousReturn(this SupportSense sense) => sense is SupportSense.Venous or SupportSense.Both;

    /// <summary>Whether blood returns to an artery.</summary>
    /// <param name="sense">The sense.</param>
    public static bool HasArterialReturn(this SupportSense sense) => sense is SupportSense.Arterial or SupportSense.Both;
}
