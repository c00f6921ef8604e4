using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Wires;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Insertion;

namespace Cavaxis.Bench;

/// <summary>
/// The tables of docs/models/insertion.md: what angle, wire, depth of the wire and hepatic vein change, in the same sampled anatomies of one invented
/// man with the same luck. Counts; nothing here passes or fails.
/// </summary>
internal static class InsertionSensitivity
{
    private const ulong Seed = 1;

    private static readonly BodyHabitus Man = new(45, Sex.Male, 175, 80);
    private static readonly double[] Angles = [35, 60, 75];

    /// <summary>Computes and prints all.</summary>
    /// <param name="neck">Anatomies for each row of the neck.</param>
    /// <param name="groin">Anatomies for each row of the groin.</param>
    /// <param name="onlyGroin">Whether the groin alone is wanted.</param>
    public static void Print(int neck, int groin, bool onlyGroin)
    {
        if (!onlyGroin)
        {
            Hepatic(neck);
            Neck(neck);
        }

        Groin(groin);
    }

    private static void Neck(int count)
    {
        FigureTable table = new(
            $"From the right neck, dual lumen 31 Fr to 25 cm, {count} anatomies",
            "sagittal angle", "wire", "every part right", "wire ends in right ventricle", "atrial loop", "hepatic vein", "other", "not followed", "tip of cannula in ventricle", "wire drawn back, mean mm");
        LumenShape[] shapes = Shapes(count);
        foreach (double angle in Angles)
        {
            foreach (WireClass wire in Enum.GetValues<WireClass>())
            {
                AnatomyOutcome[] outcomes = Run(Neck(wire), [.. shapes.Select(s => s.With(AxisDimension.CavalBendSagittal, angle))]);
                table.Add(
                    $"{angle}°", $"{wire}", $"{outcomes.Count(static o => o.IsRight)}", $"{Ends(outcomes, WireEnd.RightVentricle)}", $"{Ends(outcomes, WireEnd.AtrialLoop)}", $"{Ends(outcomes, WireEnd.HepaticVein)}",
                    $"{Ends(outcomes, WireEnd.Appendage, WireEnd.Azygos, WireEnd.OtherVein, WireEnd.Short)}", $"{outcomes.Count(static o => o.Fault.Length > 0)}",
                    $"{outcomes.Count(static o => o.CannulaTip == LumenSite.RightVentricle)}", $"{outcomes.Average(static o => o.WireLostMm):F1}");
            }
        }

        table.Print();
    }

    private static void Groin(int count)
    {
        FigureTable table = new(
            $"From the right groin, drainage 25 Fr to the mouth of the IVC, {count} anatomies; wire to three quarters of the SVC, or 10 cm less",
            "sagittal angle", "wire", "fed", "ends in upper SVC", "short of it", "atrial loop", "right ventricle", "hepatic vein", "other", "loop or ventricle after the cannula", "tip of cannula astray", "not followed", "wire drawn back, mean mm");
        LumenShape[] shapes = Shapes(count);
        foreach (double angle in Angles)
        {
            foreach (WireClass wire in new[] { WireClass.Floppy, WireClass.Stiff, WireClass.ExtraStiff })
            {
                foreach (double deeper in new[] { 0.0, -100 })
                {
                    AnatomyOutcome[] outcomes = Run(Groin(wire, deeper), [.. shapes.Select(s => s.With(AxisDimension.CavalBendSagittal, angle))]);
                    table.Add(
                        $"{angle}°", $"{wire}", $"{(deeper < 0 ? "10 cm less" : "usual")}", $"{Ends(outcomes, WireEnd.UpperSvc)}", $"{Ends(outcomes, WireEnd.Short)}", $"{Ends(outcomes, WireEnd.AtrialLoop)}",
                        $"{Ends(outcomes, WireEnd.RightVentricle)}", $"{Ends(outcomes, WireEnd.HepaticVein)}", $"{Ends(outcomes, WireEnd.Appendage, WireEnd.Azygos, WireEnd.OtherVein)}",
                        $"{outcomes.Count(static o => o.AfterAdvance is WireEnd.AtrialLoop or WireEnd.RightVentricle)}",
                        $"{outcomes.Count(static o => o.CannulaTip is LumenSite.RightVentricle or LumenSite.HepaticVein or LumenSite.Appendage or LumenSite.RenalVein)}",
                        $"{outcomes.Count(static o => o.Fault.Length > 0)}", $"{outcomes.Average(static o => o.WireLostMm):F1}");
                }
            }
        }

        table.Print();
    }

    private static void Hepatic(int count)
    {
        FigureTable table = new(
            $"Hepatic vein, from the right neck with a stiff wire, {count} anatomies, sagittal angle 35°", "angle between hepatic vein and IVC below it", "its width over that of the IVC", "wire ends in hepatic vein", "deep IVC", "other", "not followed");
        LumenShape[] shapes = Shapes(count);
        foreach (double angle in new[] { 30.0, 63, 90 })
        {
            foreach (double width in new[] { 0.65, 0.95 })
            {
                AnatomyOutcome[] outcomes = Run(Neck(WireClass.Stiff), [.. shapes.Select(s => s.With(AxisDimension.CavalBendSagittal, 35).With(LumenDimension.HepaticVeinAngle, angle).With(LumenDimension.HepaticVeinDiameter, width))]);
                int hepatic = Ends(outcomes, WireEnd.HepaticVein);
                int deep = Ends(outcomes, WireEnd.DeepIvc);
                table.Add($"{angle}°", $"{width}", $"{hepatic}", $"{deep}", $"{count - hepatic - deep}", $"{outcomes.Count(static o => o.Fault.Length > 0)}");
            }
        }

        table.Print();
    }

    private static InsertionTask Neck(WireClass wire) => new(CannulaRole.DualLumen, DeviceCatalogue.BuiltIn.Cannula("bicaval-31fr-31cm"), BodySide.Right, true, 250, wire);

    private static InsertionTask Groin(WireClass wire, double deeper)
    {
        CavalAxis middle = CavalAxis.OfMedians(PopulationModel.For(Man));
        return new InsertionTask(
            CannulaRole.Drainage, DeviceCatalogue.BuiltIn.Cannula("drain-multi-25fr-55cm"), BodySide.Right, false, middle.FromGroin(BodySide.Right, 0) - middle[CavalLandmark.Icaj], wire, deeper);
    }

    private static int Ends(AnatomyOutcome[] outcomes, params WireEnd[] ends) => outcomes.Count(o => ends.Contains(o.AfterFeed));

    private static LumenShape[] Shapes(int count)
    {
        AxisSamples samples = AxisSampler.Draw(PopulationModel.For(Man), count, Seed);
        return [.. Enumerable.Range(0, count).Select(i => LumenShape.OfSample(samples, i, Seed))];
    }

    private static AnatomyOutcome[] Run(InsertionTask task, LumenShape[] shapes)
    {
        AnatomyOutcome[] outcomes = new AnatomyOutcome[shapes.Length];
        Parallel.For(0, shapes.Length, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => outcomes[i] = new AnatomyInsertion(
            task, shapes[i], InsertionUnknowns.Draw(task.Wire, task.Stiffness, (uint)i, Seed)).Outcome);
        return outcomes;
    }
}
