using System.Globalization;
using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>A control with where it stands: present value, steps taken, and how far it may go.</summary>
/// <param name="Control">What is changed.</param>
/// <param name="Present">Value now in the patient shown, unit of the page; 100 where a share of it is changed.</param>
/// <param name="Low">Lowest value, unit of the page.</param>
/// <param name="High">Highest value, unit of the page.</param>
/// <param name="Steps">Steps taken, below zero for down.</param>
public sealed record Stepper(Control Control, double Present, double Low, double High, int Steps)
{
    /// <summary>A control as it stands in a patient.</summary>
    /// <param name="control">What is changed.</param>
    /// <param name="patient">The patient shown.</param>
    /// <returns>Nothing changed yet.</returns>
    public static Stepper Of(Control control, CirculationParameters patient)
    {
        (double low, double high) = ParameterTable.Bounds(control.Parameter, patient.MassKg);
        double now = patient[control.Parameter];
        double per = control.Form == ChangeKind.Multiply ? 100 / now : control.PerTable;
        return new Stepper(control, now * per, low * per, high * per, 0);
    }

    /// <summary>The value asked for, unit of the page. Steps lead over round numbers: the first may be shorter.</summary>
    public double Value => ValueAt(Steps);

    /// <summary>True when the value differs from the present one.</summary>
    public bool IsChanged => Steps != 0;

    /// <summary>Whether a step up stays in range.</summary>
    public bool CanRise => ValueAt(Steps + 1) <= High + Rounding;

    /// <summary>Whether a step down stays in range.</summary>
    public bool CanFall => ValueAt(Steps - 1) >= Low - Rounding;

    /// <summary>The value with its unit.</summary>
    public string Shown => Number(Value) + " " + Control.Unit;

    /// <summary>The present value with its unit.</summary>
    public string ShownPresent => Number(Present) + " " + Control.Unit;

    /// <summary>The range with its unit.</summary>
    public string ShownRange => $"{Number(Low)} to {Number(High)} {Control.Unit}";

    /// <summary>The change in words: "Pump flow 4.60 → 5.00 L/min".</summary>
    public string Sentence => $"{Control.Words} {Number(Present)} → {Number(Value)} {Control.Unit}";

    private double Rounding => 1e-9 * (1 + Math.Abs(High));

    private double Size => Control.Form == ChangeKind.Multiply ? 100 * Control.Step : Control.Step;

    /// <summary>The change for the model.</summary>
    /// <returns>The change; null where there is none.</returns>
    public ParameterChange? Change() => !IsChanged ? null : Control.Form switch
    {
        ChangeKind.Multiply => ParameterChange.By(Control.Parameter, Value / 100),
        ChangeKind.Add => ParameterChange.Plus(Control.Parameter, (Value - Present) / Control.PerTable),
        _ => ParameterChange.To(Control.Parameter, Math.Clamp(Value, Low, High) / Control.PerTable),
    };

    /// <summary>A step further, if it stays in range.</summary>
    /// <param name="up">Up or down.</param>
    /// <returns>The stepper after it.</returns>
    public Stepper Stepped(bool up) => (up ? CanRise : CanFall) ? this with { Steps = Steps + (up ? 1 : -1) } : this;

    /// <summary>Several steps further, as far as they stay in range.</summary>
    /// <param name="steps">How many, below zero for down.</param>
    /// <returns>The stepper after them.</returns>
    public Stepper SteppedBy(int steps)
    {
        Stepper stepped = this;
        for (int i = 0; i < Math.Abs(steps); i++)
        {
            stepped = stepped.Stepped(steps > 0);
        }

        return stepped;
    }

    private double ValueAt(int steps)
    {
        if (steps == 0)
        {
            return Present;
        }

        // Amounts and shares go from where they are; settings go over the marks of their step.
        if (Control.Form != ChangeKind.Set)
        {
            return Present + (steps * Size);
        }

        double marks = Present / Size;
        double first = steps > 0 ? Math.Floor(marks + 1e-6) : Math.Ceiling(marks - 1e-6);
        return (first + steps) * Size;
    }

    private string Number(double value)
    {
        string text = value.ToString("F" + Control.Digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.Trim('-', '0', '.').Length == 0 ? text.TrimStart('-') : text.Replace('-', '−');
    }
}
