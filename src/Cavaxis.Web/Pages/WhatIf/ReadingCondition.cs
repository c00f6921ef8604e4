using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>One thing that must hold in the computed differences for a cause to be named.</summary>
/// <param name="Name">In words, for people who check the rules.</param>
/// <param name="Holds">Whether it holds for the reading of a quantity.</param>
internal sealed record ReadingCondition(string Name, Func<ReadingFacts, CirculationQuantity, bool> Holds)
{
    private const double Faster = 0.02;

    /// <summary>A quantity rises.</summary>
    /// <param name="quantity">Which.</param>
    public static ReadingCondition Up(CirculationQuantity quantity) => new($"{quantity} up", (facts, _) => facts.WayOf(quantity) == Sense.Up);

    /// <summary>A quantity falls.</summary>
    /// <param name="quantity">Which.</param>
    public static ReadingCondition Down(CirculationQuantity quantity) => new($"{quantity} down", (facts, _) => facts.WayOf(quantity) == Sense.Down);

    /// <summary>A quantity does not rise.</summary>
    /// <param name="quantity">Which.</param>
    public static ReadingCondition NotUp(CirculationQuantity quantity) => new($"{quantity} not up", (facts, _) => facts.WayOf(quantity) is Sense.Same or Sense.Down);

    /// <summary>A quantity does not fall.</summary>
    /// <param name="quantity">Which.</param>
    public static ReadingCondition NotDown(CirculationQuantity quantity) => new($"{quantity} not down", (facts, _) => facts.WayOf(quantity) is Sense.Same or Sense.Up);

    /// <summary>A number was asked to be more.</summary>
    /// <param name="parameter">Which.</param>
    public static ReadingCondition More(CirculationParameter parameter) => new($"more {parameter} asked", (facts, read) => facts.AskedWay(parameter) == Sense.Up && facts.IsMovedBy(parameter, read));

    /// <summary>A number was asked to be less.</summary>
    /// <param name="parameter">Which.</param>
    public static ReadingCondition Less(CirculationParameter parameter) => new($"less {parameter} asked", (facts, read) => facts.AskedWay(parameter) == Sense.Down && facts.IsMovedBy(parameter, read));

    /// <summary>A quantity grows by a larger share than another (or shrinks by a smaller).</summary>
    /// <param name="fast">The one that gains.</param>
    /// <param name="slow">The other.</param>
    public static ReadingCondition Outpaces(CirculationQuantity fast, CirculationQuantity slow) =>
        new($"{fast} outpaces {slow}", (facts, _) => facts.Relative(fast) - facts.Relative(slow) > Faster);

    /// <summary>The support returns to a vein alone.</summary>
    public static ReadingCondition VenousOnly { get; } = new("veno-venous", (facts, _) => facts.Support == SupportSense.Venous);

    /// <summary>The support returns to an artery.</summary>
    public static ReadingCondition Arterial { get; } = new("return to an artery", (facts, _) => facts.Support.HasArterialReturn());
}
