using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Quantities;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>What a result says about each quantity, as the rules of reading ask for it.</summary>
/// <param name="Support">Where the circuit returns its blood.</param>
/// <param name="Changes">What was asked for.</param>
/// <param name="Rows">Bands before, after and of the difference.</param>
internal sealed record ReadingFacts(SupportSense Support, IReadOnlyList<ParameterChange> Changes, IReadOnlyList<QuantityChange> Rows)
{
    /// <summary>The row of a quantity.</summary>
    /// <param name="quantity">Which.</param>
    public QuantityChange Row(CirculationQuantity quantity) => Rows[(int)quantity];

    /// <summary>Which way a quantity moves by its median difference.</summary>
    /// <param name="quantity">Which.</param>
    public Sense WayOf(CirculationQuantity quantity) => Row(quantity).Difference is not Estimate d ? Sense.Unknown
        : Math.Abs(d.Value) < ReadingTable.LeastOf(quantity) ? Sense.Same
        : d.Value > 0 ? Sense.Up : Sense.Down;

    /// <summary>True where nine tenths of the members agree about the way.</summary>
    /// <param name="quantity">Which.</param>
    public bool IsSure(CirculationQuantity quantity) => Row(quantity).Difference is Estimate d && d.Low * d.High > 0;

    /// <summary>Which way a number was asked to go; same where it was not asked.</summary>
    /// <param name="parameter">Which.</param>
    public Sense AskedWay(CirculationParameter parameter)
    {
        if (Changes.FirstOrDefault(c => c.Parameter == parameter) is not ParameterChange change)
        {
            return Sense.Same;
        }

        double up = change.Kind switch { ChangeKind.Multiply => change.Amount - 1, ChangeKind.Add => change.Amount, _ => SetUp(change) };
        return up > 0 ? Sense.Up : up < 0 ? Sense.Down : Sense.Same;
    }

    /// <summary>Relative change of a quantity; not a number where it has none.</summary>
    /// <param name="quantity">Which.</param>
    public double Relative(CirculationQuantity quantity) => Row(quantity) is { Before: Estimate before, Difference: Estimate d } && Math.Abs(before.Value) > 1e-9
        ? d.Value / Math.Abs(before.Value)
        : double.NaN;

    /// <summary>Values before, from which a set value is told up from down.</summary>
    public IReadOnlyDictionary<CirculationParameter, double> PresentValues { get; init; } = new Dictionary<CirculationParameter, double>();

    /// <summary>
    /// Where several changes were asked: what each of them does alone to each quantity of the patient shown. Without it a lone change is
    /// taken to move what moves.
    /// </summary>
    public IReadOnlyDictionary<(CirculationParameter Parameter, CirculationQuantity Quantity), double> Alone { get; init; } =
        new Dictionary<(CirculationParameter Parameter, CirculationQuantity Quantity), double>();

    /// <summary>True where an asked change alone moves a quantity the way that all of them together do.</summary>
    /// <param name="parameter">What was asked.</param>
    /// <param name="quantity">What is read.</param>
    public bool IsMovedBy(CirculationParameter parameter, CirculationQuantity quantity) => Changes.Count < 2
        || (Alone.TryGetValue((parameter, quantity), out double alone) && Math.Abs(alone) >= ReadingTable.LeastOf(quantity)
            && WayOf(quantity) == (alone > 0 ? Sense.Up : Sense.Down));

    private double SetUp(ParameterChange change) => PresentValues.TryGetValue(change.Parameter, out double present) ? change.Amount - present : 0;
}
