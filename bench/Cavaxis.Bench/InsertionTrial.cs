using System.Collections.Immutable;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Wires;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Insertion;

namespace Cavaxis.Bench;

/// <summary>One cannula for one random adult: what is inserted, and into which anatomy.</summary>
/// <param name="Way">Which way in.</param>
/// <param name="Task">What is inserted.</param>
/// <param name="Shape">The anatomy.</param>
/// <param name="Unknowns">Stiffness and friction.</param>
internal sealed record InsertionTrial(string Way, InsertionTask Task, LumenShape Shape, InsertionUnknowns Unknowns)
{
    private const ulong Seed = 20260901;

    /// <summary>
    /// Trial of a number: ways and wires take turns; sex, age, height and weight are drawn evenly, the anatomy from the population model. The
    /// depth is that which reaches the usual place in the middle anatomy of such a body, as a plan would have it.
    /// </summary>
    /// <param name="number">Which.</param>
    public static InsertionTrial Of(int number)
    {
        Random chance = new(number);
        double Between(double low, double high) => low + ((high - low) * chance.NextDouble());
        double height = Between(150, 198);
        BodyHabitus body = new(Between(18, 80), chance.Next(2) == 0 ? Sex.Female : Sex.Male, height, Between(18, 42) * height * height * 1e-4);
        AxisDistribution belief = PopulationModel.For(body);
        AxisSamples sample = new(1);
        AxisSampler.Fill(belief, sample, Seed, (uint)number);
        LumenShape shape = LumenShape.OfSample(sample, 0, Seed, (uint)number);
        WireClass wire = (WireClass)(number / Ways.Length % 4);
        (string way, CannulaRole role, string device, BodySide side, bool neck, Func<CavalAxis, double> place) = Ways[number % Ways.Length];
        CavalAxis middle = CavalAxis.OfMedians(belief);
        double target = place(middle);
        double depth = neck ? target - middle.FromNeck(side, 0) : middle.FromGroin(side, 0) - target;
        InsertionTask task = new(role, DeviceCatalogue.BuiltIn.Cannula(device), side, neck, depth, wire);
        return new InsertionTrial(
            way, task, shape, InsertionUnknowns.Draw(wire, task.Stiffness, (uint)number, Seed));
    }

    /// <summary>Inserts.</summary>
    public AnatomyOutcome Run() => new AnatomyInsertion(Task, Shape, Unknowns).Outcome;

    private static ImmutableArray<(string Way, CannulaRole Role, string Device, BodySide Side, bool Neck, Func<CavalAxis, double> Place)> Ways { get; } =
    [
        ("right neck, dual lumen 27 Fr", CannulaRole.DualLumen, "bicaval-27fr-29cm", BodySide.Right, true, static a => a[CavalLandmark.Icaj] + 30),
        ("right groin, drainage 25 Fr", CannulaRole.Drainage, "drain-multi-25fr-55cm", BodySide.Right, false, static a => a[CavalLandmark.Icaj] + 20),
        ("left groin, return 21 Fr", CannulaRole.VenousReturn, "return-venous-21fr-52cm", BodySide.Left, false, static a => a[CavalLandmark.Icaj] / 2),
        ("left neck, return 19 Fr", CannulaRole.VenousReturn, "return-venous-19fr-16cm", BodySide.Left, true, static _ => 10),
    ];
}
