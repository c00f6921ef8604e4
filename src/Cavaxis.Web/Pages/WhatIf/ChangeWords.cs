using System.Globalization;
using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>A change in words of the page.</summary>
internal static class ChangeWords
{
    /// <summary>The words, such as "Pump flow to 5.00 L/min" or "Blood volume +500 mL".</summary>
    /// <param name="change">The change.</param>
    /// <param name="shown">The patient shown.</param>
    /// <param name="referenceSpeedPerMin">Speed at which the speed ratio is one; null where not known.</param>
    public static string Of(ParameterChange change, CirculationParameters shown, double? referenceSpeedPerMin)
    {
        Control control = ControlTable.For(shown, referenceSpeedPerMin).First(c => c.Parameter == change.Parameter);
        string digits = "F" + control.Digits.ToString(CultureInfo.InvariantCulture);
        string Text(double value) => value.ToString(digits, CultureInfo.InvariantCulture).Replace('-', '−');
        return change.Kind switch
        {
            ChangeKind.Multiply => $"{control.Words} to {Text(100 * change.Amount)} % of now",
            ChangeKind.Add => $"{control.Words} {(change.Amount > 0 ? "+" : string.Empty)}{Text(change.Amount * control.PerTable)} {control.Unit}",
            _ => $"{control.Words} to {Text(change.Amount * control.PerTable)} {control.Unit}",
        };
    }
}
