using Cavaxis.Quantities.Faults;

namespace Cavaxis.Mechanics.Insertion;

/// <summary>One step of an insertion.</summary>
public sealed record InsertionStep
{
    private InsertionStep(InsertionAction action, double amount) => (Action, Amount) = (action, amount);

    /// <summary>What is done.</summary>
    public InsertionAction Action { get; }

    /// <summary>How much: mm, or rad for a rotation.</summary>
    public double Amount { get; }

    /// <summary>Pushes the wire in.</summary>
    /// <param name="lengthMm">Length, mm.</param>
    /// <returns>The step.</returns>
    public static InsertionStep FeedWire(double lengthMm) => OfLength(InsertionAction.FeedWire, lengthMm);

    /// <summary>Pushes the cannula in.</summary>
    /// <param name="lengthMm">Length, mm.</param>
    /// <returns>The step.</returns>
    public static InsertionStep AdvanceCannula(double lengthMm) => OfLength(InsertionAction.AdvanceCannula, lengthMm);

    /// <summary>Pulls the wire out.</summary>
    /// <param name="lengthMm">Length, mm; more than is in pulls all of it out.</param>
    /// <returns>The step.</returns>
    public static InsertionStep WithdrawWire(double lengthMm) => OfLength(InsertionAction.WithdrawWire, lengthMm);

    /// <summary>Pulls the introducer out.</summary>
    /// <param name="lengthMm">Length, mm; more than is in pulls all of it out.</param>
    /// <returns>The step.</returns>
    public static InsertionStep WithdrawIntroducer(double lengthMm) => OfLength(InsertionAction.WithdrawIntroducer, lengthMm);

    /// <summary>Pulls the cannula out.</summary>
    /// <param name="lengthMm">Length, mm; more than is in pulls all of it out.</param>
    /// <returns>The step.</returns>
    public static InsertionStep WithdrawCannula(double lengthMm) => OfLength(InsertionAction.WithdrawCannula, lengthMm);

    /// <summary>Turns all at the skin.</summary>
    /// <param name="angleRad">Angle about the direction into the body, rad.</param>
    /// <returns>The step.</returns>
    public static InsertionStep Rotate(double angleRad) => new(
        InsertionAction.Rotate, Require.InRange(angleRad, -100, 100, "step.angleRad", "Give the angle in rad."));

    private static InsertionStep OfLength(InsertionAction action, double lengthMm) =>
        new(action, Require.InRange(lengthMm, 0, 5000, "step.lengthMm", "Give a length in mm."));
}
