using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Population;
using Cavaxis.Quantities;
using static Cavaxis.Anatomy.Axis.AxisDimension;

namespace Cavaxis.Validation;

/// <summary>
/// The population of the anatomy room against published series that it was not built from. Which sources built it is
/// told by <see cref="PopulationTable"/>; no parameter was fitted to a series here. Rows "weighed" chose between laws
/// (one line for all ages, the growth exponent of the atrium), rows "held out" did not enter at all. Where series
/// disagree both are shown.
/// </summary>
public sealed class AnatomyPopulationChecks : IReferenceChecks
{
    private const string Room = "Anatomy";

    private const string DefinitionNote =
        "Bound: one SD between patients; series differ mostly in their edge and in the height of entry.";

    private static readonly BodyHabitus Reference = new(40, Sex.Male, 170, 68);

    private static AxisDistribution Adult { get; } = PopulationModel.For(Reference, NeckEntry.MidNeck);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows() => [.. NeckDepths(), .. VenaeCavae(), .. AccessVessels(), .. Children()];

    private static IEnumerable<ValidationRow> NeckDepths()
    {
        double right = Adult.Median(RightNeckSkinToScaj);
        double sd = Adult.Interval(RightNeckSkinToScaj).Sd;
        double extra = Adult.Median(LeftNeckExtra);
        double extraSd = Adult.Interval(LeftNeckExtra).Sd;
        Source cadaver = new("31 adult cadavers, dissection 2024", Certainty.Seen);
        Source table = new(
            "puncture site to atrio-caval junction, secondary table without its source", Certainty.SeenSecondHand);
        yield return Within(
            "Held out: right jugular skin to SCAJ, 170 cm, by ultrasound",
            new(
                "Lee 2024, Int J Med Sci 21:431, 89 adults: height/10 - 1.5 cm to 2 cm above the crista",
                Certainty.Seen),
            175, right, "mm", sd / 2, "Bound: half an SD between patients.");
        yield return Within("Held out: right jugular skin to SCAJ, table", table, 160, right, "mm", sd, DefinitionNote);
        yield return Within(
            "Held out: right jugular skin to SCAJ, sum of surface and radiograph",
            new("Mo 2020, 10.1007/s00268-020-05449-7, 70 adults: 7.6 + 7.0 + 4.4 cm", Certainty.Derived), 190, right,
            "mm", sd, DefinitionNote);
        yield return new ValidationRow(
            Room, "Held out: SCAJ lies deeper than a caval bypass cannula set in the SVC",
            new("Circ J 2010;74:284, 45 adults: 142.0 mm, SD 11.6", Certainty.Seen), 142, right, "mm",
            Tolerance.AtLeast, 0);
        yield return Within(
            "Held out: left less right way to the SCAJ, table", table, 31, extra, "mm", extraSd, DefinitionNote);
        yield return Within(
            "Held out: left less right way to the brachiocephalic confluence", cadaver, 30.1, extra, "mm", extraSd,
            DefinitionNote);
        yield return Within(
            "Held out: left less right way to the end of the dissection", cadaver, 25.1, extra, "mm", extraSd,
            "End point not defined in the abstract.");
    }

    private static IEnumerable<ValidationRow> VenaeCavae()
    {
        Source mri = new("Chest 1998;114:820, 42 adults, MRI: median 68, 44 to 100 mm", Certainty.Seen);
        double svc = Adult.Median(SvcLength);
        double spread = Adult.LatentSd(SvcLength);
        // Expected extremes of 42 normal values lie 2.19 SD from the middle.
        yield return Within("Held out: SVC length, median", mri, 68, svc, "mm", 7);
        yield return Relative(
            "Held out: SVC length, shortest of 42", mri, 44, svc * Math.Exp(-2.19 * spread), "mm", 0.15);
        yield return Relative(
            "Held out: SVC length, longest of 42", mri, 100, svc * Math.Exp(2.19 * spread), "mm", 0.15);
        double heightSpread = 9.0 / 170;
        yield return Within(
            "Held out: share of SVC length variance that height explains",
            new("200 adults, CT, r2 0.09 (accjournal 470)", Certainty.Seen), 0.09,
            heightSpread * heightSpread / ((heightSpread * heightSpread) + (spread * spread)), "1", 0.05,
            "Height SD taken as 9 cm.");
        yield return Relative(
            "Held out: SVC diameter, venous CT", new("1336 adults, median area 297.2 mm2", Certainty.Derived), 19.5,
            Adult.Median(SvcDiameter), "mm", 0.20, "Filled with contrast; conflict with the next row.");
        yield return Relative(
            "Held out: SVC diameter, cadaver", new("31 cadavers, radius 7.92 mm", Certainty.Derived), 15.84,
            Adult.Median(SvcDiameter), "mm", 0.10);
        yield return Relative(
            "Held out: IVC calibre at the heart, angiocardiography",
            new("normal adults, 23.9 mm, SE 0.68 (scilit 04f90f40)", Certainty.Seen), 23.9, Adult.Median(IvcDiameter),
            "mm", 0.15, "Projected width of an oval vein exceeds its circle equivalent.");
        yield return Relative(
            "Held out: IVC diameter inside the liver",
            new("69 cadaver livers, median 23 mm (s12664-009-0081-5)", Certainty.Seen), 23, Adult.Median(IvcDiameter),
            "mm", 0.15);
        Source echo = new(
            "40 adults, ultrasound from the oesophagus: 19.4 mm, SD 5.6; IVC 19.5, SD 5 (prfs 201609000-00007)",
            Certainty.Seen);
        yield return Relative(
            "Held out: IVC diameter at the heart, ultrasound", echo, 19.5, Adult.Median(IvcDiameter), "mm", 0.15);
        yield return Within(
            "Held out: ICAJ to hepatic vein", echo, 19.4, Adult.Interval(IcajToHepaticVein).Value, "mm", 3,
            "Supports the low edge as the model's own: the autopsy sum is 37.7 mm from the high one.");
        yield return Relative(
            "Held out: ICAJ to hepatic vein, spread", echo, 5.6, Adult.Interval(IcajToHepaticVein).Sd, "mm", 0.35,
            "The model is kept wider than one series.");
        yield return Relative(
            "Held out: tricuspid long axis from the indexed value",
            new("228 healthy adults, 21 mm/m2, at 1.8 m2", Certainty.Derived), 37.8, Adult.Median(TricuspidDiameter),
            "mm", 0.10);
    }

    private static IEnumerable<ValidationRow> AccessVessels()
    {
        double vein = BothSexes(RightFemoralVeinDiameter, Reference.AgeYears);
        Source position = new(
            "278 adults, ultrasound (ACMJ 2025;7:529): 87 to 151 mm2 from head down to reverse with frog leg",
            Certainty.Derived);
        yield return Relative(
            "Held out: femoral vein lying flat",
            new("82 adults (Phlebology, 0268355518772746): 13.6 mm", Certainty.Seen), 13.6, vein, "mm", 0.20);
        yield return new ValidationRow(
            Room, "Held out: femoral vein not below the smallest position", position, 10.5, vein, "mm",
            Tolerance.AtLeast, 0);
        yield return new ValidationRow(
            Room, "Held out: femoral vein not above the widest position", position, 13.9, vein, "mm", Tolerance.AtMost,
            0);
        double artery = BothSexes(RightFemoralArteryDiameter, 65);
        yield return Relative(
            "Held out: femoral artery, angiography",
            new("200 angiograms (CCI 2001;53:289): 6.9 mm, SD 1.4", Certainty.Seen), 6.9, artery, "mm", 0.30,
            "Diseased and smaller arteries; conflict with healthy duplex series shown in docs/models/anatomy.md.");
        double man = PopulationModel.For(new BodyHabitus(
            50, Sex.Male, 175, 80)).Interval(RightFemoralArteryDiameter).High;
        yield return Relative(
            "Held out: femoral artery of men, 95th percentile, MR",
            new("756 men (10.1371/journal.pone.0197559): 10.2 mm", Certainty.Seen), 10.2, man, "mm", 0.25,
            "Contrast lumen; duplex, which built the model, reads wider.");
        yield return Within(
            "Held out: femoral less axillary artery, CT",
            new("96 adults (10.1155/2016/3610705): 1.69 mm, SD 1.74", Certainty.Seen), 1.69,
            artery - BothSexes(RightAxillaryArteryDiameter, 65), "mm", 1);
        Source carotid = new("104 adults, mean 28 years, ultrasound: 6.1 mm, SD 0.8", Certainty.Seen);
        yield return Relative(
            "Held out: common carotid artery", carotid, 6.1, BothSexes(RightCarotidArteryDiameter, 28), "mm", 0.05);
        yield return Relative(
            "Held out: common carotid artery, spread", carotid, 0.8, Adult.Interval(RightCarotidArteryDiameter).Sd,
            "mm", 0.20);
    }

    private static IEnumerable<ValidationRow> Children()
    {
        Source yoon = new(
            "Yoon 2006, Acta Anaesthesiol Scand 50:355: 1.7 + 0.07 x height cm keeps 97.5 % above the atrium",
            Certainty.Seen);
        foreach (
            (
                double age, double height,
                double weight) in new[] { (0.4, 60.0, 5.5), (4.0, 100.0, 16.0), (10.5, 140.0, 34.0) })
        {
            AxisDistribution child = PopulationModel.For(
                new BodyHabitus(age, Sex.Male, height, weight), NeckEntry.MidNeck);
            yield return Relative(
                FormattableString.Invariant($"Weighed, not fitted: depth reached by 2.5 % at {height:F0} cm"), yoon, 17 + (0.7 * height), LowQuantile(child),
                "mm", 0.15);
        }

        AxisDistribution toddler = PopulationModel.For(new BodyHabitus(1.8, Sex.Female, 85, 12), NeckEntry.MidNeck);
        yield return Relative(
            "Held out: depth that keeps most above the atrium, 85 cm",
            new("height/10 - 1 cm below 100 cm (Andropoulos 2001)", Certainty.FromMemory), 75, LowQuantile(toddler),
            "mm", 0.10);
        AxisDistribution four = PopulationModel.For(new BodyHabitus(4, Sex.Male, 100, 16), NeckEntry.MidNeck);
        Source carina = new(
            "92 children (10.1007/s00247-015-3289-9): right 0.034 h + 3.173, left 0.072 h + 2.113 cm to the carina",
            Certainty.Derived);
        yield return Within(
            "Held out: left less right way, 100 cm", carina, 27.4, four.Median(LeftNeckExtra), "mm", 10);
        yield return Relative(
            "Held out: skin to carina + 23.7 mm to the SCAJ, 100 cm", carina, 89.4, four.Median(RightNeckSkinToScaj),
            "mm", 0.20, "Carina to SCAJ scaled from 40.3 mm in adults.");
        yield return Within(
            "Weighed, not fitted: intercaval distance, 4.1 years",
            new("60 children after cavopulmonary anastomosis, 1.8 to 17.1 years: 50.1 mm, SD 11.2", Certainty.Seen),
            50.1, four.Median(AtrialSpan), "mm", 11.2,
            "Abnormal hearts, some much older than the median: expected above the model.");
        AxisDistribution school = PopulationModel.For(new BodyHabitus(9.5, Sex.Female, 135, 30));
        Source turkish = new(
            "92 children of 7 to 12 years (10.1016/j.ijporl.2004.04.004): circle equivalent of 11.26 x 7.64 and 10.01 x 6.8 mm",
            Certainty.Derived);
        yield return Relative(
            "Held out: right internal jugular vein, 9.5 years", turkish, 9.28, school.Median(RightJugularVeinDiameter),
            "mm", 0.20);
        yield return Relative(
            "Held out: left internal jugular vein, 9.5 years", turkish, 8.25, school.Median(LeftJugularVeinDiameter),
            "mm", 0.20);
        AxisDistribution newborn = PopulationModel.For(new BodyHabitus(0.04, Sex.Male, 51, 3.5));
        AxisDistribution teenager = PopulationModel.For(new BodyHabitus(14.5, Sex.Male, 162, 52));
        Source ratio = new(
            "100 children: width of the femoral vein against the jugular 0.58 below 30 days, 0.73 at 12 to 17 years",
            Certainty.Seen);
        yield return Within(
            "Held out: femoral to jugular vein, newborn", ratio, 0.58,
            newborn.Median(RightFemoralVeinDiameter) / newborn.Median(RightJugularVeinDiameter), "1", 0.2,
            "The model's newborn femoral vein is wide against this series: sources disagree two-fold.");
        yield return Within(
            "Held out: femoral to jugular vein, 14.5 years", ratio, 0.73,
            teenager.Median(RightFemoralVeinDiameter) / teenager.Median(RightJugularVeinDiameter), "1", 0.15);
    }

    private static double BothSexes(AxisDimension dimension, double ageYears)
    {
        double man = PopulationModel.For(
            new BodyHabitus(ageYears, Sex.Male, Reference.HeightCm, Reference.WeightKg)).Median(dimension);
        double woman = PopulationModel.For(
            new BodyHabitus(ageYears, Sex.Female, Reference.HeightCm, Reference.WeightKg)).Median(dimension);
        return (man + woman) / 2;
    }

    private static double LowQuantile(AxisDistribution distribution) =>
        Math.Exp(
            distribution.LatentMean(RightNeckSkinToScaj) - (1.959964 * distribution.LatentSd(RightNeckSkinToScaj)));

    private static ValidationRow Within(
        string check, Source source, double expected, double got, string unit, double bound, string note = "") =>
        new(Room, check, source, expected, got, unit, Tolerance.Absolute, bound, note);

    private static ValidationRow Relative(
        string check, Source source, double expected, double got, string unit, double bound, string note = "") =>
        new(Room, check, source, expected, got, unit, Tolerance.Relative, bound, note);
}
