using Cavaxis.Course.Explanations.Knowledge;

namespace Cavaxis.Course.Explanations.Trends;

/// <summary>A setting that people changed between the windows.</summary>
/// <param name="Setting">Which.</param>
/// <param name="Before">Value before, in the unit of the setting.</param>
/// <param name="Now">Value now.</param>
public sealed record SettingChange(SettingKind Setting, double Before, double Now)
{
    /// <summary>The change in the unit of <see cref="SettingResponse.PerUnit"/>.</summary>
    public double Step => Setting is SettingKind.PumpSpeed or SettingKind.Sweep
        ? Before > 0 && Now > 0 ? Math.Log(Now / Before) : 0
        : Now - Before;
}
