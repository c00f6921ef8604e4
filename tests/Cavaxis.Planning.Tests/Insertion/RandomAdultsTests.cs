using System.Text.RegularExpressions;
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

namespace Cavaxis.Planning.Tests.Insertion;

/// <summary>A seeded share of what the bench does with a thousand (`--insertion-anatomies`).</summary>
public partial class RandomAdultsTests
{
    private const int Adults = 20;
    private const ulong Seed = 7;

    /// <summary>Nodes before the skin, on it, and guided by the tract: the wall is not felt there.</summary>
    private const int Guided = 3;

    [Fact]
    public void In_random_adults_no_node_is_ever_outside_by_a_tenth_of_a_millimetre_and_what_is_not_followed_has_a_named_reason()
    {
        AnatomyOutcome[] outcomes = new AnatomyOutcome[Adults];
        CavalLumen[] lumens = new CavalLumen[Adults];
        Parallel.For(0, Adults, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => (outcomes[i], lumens[i]) = Inserted(i));
        for (int i = 0; i < Adults; i++)
        {
            Assert.InRange(outcomes[i].PenetrationMm, 0, 0.1);
            Assert.True(outcomes[i].Fault.Length == 0 || Reason().IsMatch(outcomes[i].Fault), outcomes[i].Fault);
            Assert.All(outcomes[i].WirePath.Skip(Guided), node => Assert.True(lumens[i].At(node).DistanceMm < 0.1 - (WireStiffness.DiameterMm / 2)));
            Assert.All(outcomes[i].FinalPath.Skip(Guided), node => Assert.True(lumens[i].At(node).DistanceMm < 0.1));
        }

        Assert.True(outcomes.Count(static o => o.Fault.Length > 0) <= 1, string.Join(", ", outcomes.Select(static o => o.Fault)));
    }

    private static (AnatomyOutcome Outcome, CavalLumen Lumen) Inserted(int number)
    {
        Random chance = new(number);
        double height = 150 + (48 * chance.NextDouble());
        AxisDistribution belief = PopulationModel.For(new BodyHabitus(
            18 + (60 * chance.NextDouble()), chance.Next(2) == 0 ? Sex.Female : Sex.Male, height, (18 + (20 * chance.NextDouble())) * height * height * 1e-4));
        AxisSamples sample = new(1);
        AxisSampler.Fill(belief, sample, Seed, (uint)number);
        LumenShape shape = LumenShape.OfSample(sample, 0, Seed, (uint)number);
        CavalAxis middle = CavalAxis.OfMedians(belief);
        BodySide side = number % 4 < 2 ? BodySide.Right : BodySide.Left;
        WireClass wire = (WireClass)(number / 4 % 4);
        InsertionTask task = number % 2 == 0
            ? new(CannulaRole.DualLumen, DeviceCatalogue.BuiltIn.Cannula("bicaval-27fr-29cm"), side, true, middle[CavalLandmark.Icaj] + 20 - middle.FromNeck(side, 0), wire)
            : new(CannulaRole.Drainage, DeviceCatalogue.BuiltIn.Cannula("drain-multi-23fr-55cm"), side, false, middle.FromGroin(side, 0) - middle[CavalLandmark.Icaj], wire);
        InsertionUnknowns unknowns = InsertionUnknowns.Draw(wire, task.Stiffness, (uint)number, Seed);
        AnatomyInsertion insertion = new(task, shape, unknowns);
        return (insertion.Outcome, insertion.Lumen);
    }

    [GeneratedRegex("^[A-Za-z]+: [A-Za-z]+$")]
    private static partial Regex Reason();
}
