using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>The circulation that the page speaks of: fitted to a running patient, or a plan connected to patients who agree with the case.</summary>
/// <param name="Key">Tells it apart from those of other states of the case.</param>
/// <param name="Basis">What it stands on, in words.</param>
/// <param name="IsFitted">True for a fit to the readings of running support, false for a connected plan.</param>
/// <param name="Reason">Why there is none; empty where there is one.</param>
/// <param name="Shown">The patient whose waves are drawn; null where there is none.</param>
/// <param name="Ensemble">All members, brought to rest where they come to rest.</param>
/// <param name="Present">Bands of every quantity before any change; null where there is no picture.</param>
/// <param name="ReferenceSpeedPerMin">Speed at which the speed ratio of the pump is one; null where the case does not name the pump.</param>
/// <param name="LeftOpen">What the readings leave open.</param>
/// <param name="Warnings">Readings that do not go together.</param>
/// <param name="Assumed">What was assumed.</param>
/// <param name="Levers">What would change the number that matters, the largest effect first.</param>
public sealed record RunningPicture(
    string Key,
    string Basis,
    bool IsFitted,
    string Reason,
    SettledState? Shown,
    IReadOnlyList<SettledState> Ensemble,
    WhatIfResult? Present,
    double? ReferenceSpeedPerMin,
    IReadOnlyList<string> LeftOpen,
    IReadOnlyList<string> Warnings,
    IReadOnlyList<string> Assumed,
    IReadOnlyList<Lever> Levers)
{
    /// <summary>Where the circuit returns its blood.</summary>
    public SupportSense Sense => Shown is null ? SupportSense.None : SupportSenses.Of(Shown.Parameters);

    /// <summary>The number that matters.</summary>
    public CirculationQuantity KeyQuantity => SupportSenses.Key(Sense);

    /// <summary>A picture that there is not.</summary>
    /// <param name="key">Tells it apart.</param>
    /// <param name="basis">What it would have stood on.</param>
    /// <param name="fitted">Whether it was to be a fit.</param>
    /// <param name="reason">Why there is none.</param>
    /// <param name="assumed">What was assumed.</param>
    /// <returns>A picture without numbers.</returns>
    public static RunningPicture None(string key, string basis, bool fitted, string reason, IReadOnlyList<string> assumed) =>
        new(key, basis, fitted, reason, null, [], null, null, [], [], assumed, []);
}
