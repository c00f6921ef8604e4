using Cavaxis.Anatomy.Axis;
using Cavaxis.Quantities;
using static Cavaxis.Anatomy.Axis.AxisDimension;

namespace Cavaxis.Anatomy.Population;

/// <summary>The population table: every parameter with its source and certainty. Printed in the documentation and by
/// the command line.</summary>
public static class PopulationTable
{
    private static readonly Source Isometric = new("lengths grow with body height (isometry)", Certainty.Assumption);
    private static readonly Source Unscaled = new("taken as the same at every size", Certainty.Assumption);
    private static readonly Source AtriumGrowth = new(
        "height^0.85: between isometry and the long intercaval axis of children after cavopulmonary anastomosis", Certainty.Assumption);

    private static readonly Source GroinGrowth = new(
        "height^0.9: fits femoral skin to L3 = 0.45 kg + 8.13 cm, 78 children of 3.1 to 33.8 kg", Certainty.Derived);

    private static readonly Source SuperiorVeinGrowth = new(
        "BSA^0.55: near the square root of BSA of great vessels (Kaiser 2008, J Cardiovasc Magn Reson 10:56, aorta)", Certainty.Derived);

    private static readonly Source InferiorVeinGrowth = new(
        "BSA^0.70: 3.4 mm at 3 to 4 kg by ultrasound (143 newborns, Galdo 2023, Front Pediatr 11:1268622), raised by the adult ratio of CT to ultrasound, 21 to 15 mm", Certainty.Derived);

    private static readonly Source JugularGrowth = new(
        "BSA^0.58: 3.6 mm at 1.4 to 4.5 kg (60 infants, area 10.2 mm2, Br J Anaesth 2010) and 4.5 to 5.0 mm in the smallest of 125 children (Lopez Alvarez 2018)", Certainty.Derived);

    private static readonly Source FemoralVeinGrowth = new(
        "BSA^0.62: 2.5 mm in the smallest of 125 children (Lopez Alvarez 2018) and 4.5 mm in young infants (Warkentine 2008)", Certainty.Derived);

    private static readonly Source FemoralArteryGrowth = new(
        "BSA^0.62: 1.9 mm at 2.0 to 2.5 kg (99 infants by ultrasound, congress abstract)", Certainty.Derived);

    private static readonly Source AxillaryGrowth = new(
        "BSA^0.50: 1.9 mm at 2.0 to 2.5 kg (same 99 infants)", Certainty.Derived);

    private static readonly Source CarotidGrowth = new(
        "BSA^0.35: 2.8 mm at 2.0 to 2.5 kg (same 99 infants)", Certainty.Derived);

    private static readonly Source ValveGrowth = new("BSA^0.5; newborn annulus about 12 mm", Certainty.FromMemory);

    private static readonly Source LeftSide = new("as the right side; no published difference", Certainty.Assumption);

    /// <summary>All rows, in the order of <see cref="AxisDimension"/>.</summary>
    public static IReadOnlyList<PopulationParameter> Rows { get; } = Build();

    /// <summary>The row of one dimension.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <returns>Its row.</returns>
    public static PopulationParameter For(AxisDimension dimension) => Rows[(int)dimension];

    private static PopulationParameter[] Build()
    {
        Source femoralArtery = new(
            "between 10 and 7.8 mm, men and women, duplex (Ultrasound Med Biol 1986;12:777), and 7.3 mm, CT lumen, 112 adults; sex ratio of the first; growth with age (Sandgren 1999) seen, its rate remembered",
            Certainty.Derived);
        Source femoralVein = new(
            "area 114 mm2 = 12.0 mm, SD 35 mm2, 205 adults of 19 to 39 years (Czyzewska 2017, PLoS One 12:e0182623); sex ratio remembered",
            Certainty.Derived);
        Source axillary = new(
            "minimum lumen 6.0 mm, SD 1.1, 208 elderly adults (CCI 2018;91:150); sex ratio assumed", Certainty.Seen);
        Source bend = new(
            "mean orifice views SVC RAO 10/CAUD 66, IVC LAO 27/CRA 59, 44 patients with tricuspid regurgitation (Xiong, EIJ-D-19-00618), give 11 deg frontal and 52 sagittal; drawn towards the remembered 20 deg in all, since those hearts are wide and young ones face each other",
            Certainty.Assumption);
        Source vestibule = new(
            "centre at 0.55 to 0.65 of the way, 25 to 35 mm in front and to the left", Certainty.FromMemory);
        Source autopsy = new(
            "100 autopsies (Indian J Gastroenterol 2001;20:136) less the 17.6 mm from myocardial edge to eustachian rim; spread assumed",
            Certainty.Derived);
        PopulationParameter[] rows =
        [
            Row(
                RightNeckSkinToScaj, 173, NeckDepthLaw.MidNeckRelativeSpread, 1, 0, NeckDepthLaw.Source,
                NeckDepthLaw.GrowthSource),
            Row(
                LeftNeckExtra, 35, 10, 1, 0,
                new(
                    "Peres 1990 gives + 4 cm for the left; brachiocephalic veins of 20-30 and 60 mm give 30 to 40",
                    Certainty.Derived),
                Isometric),
            Row(
                SvcLength, 70.7, 0.20, 1, 0,
                new(
                    "70.7 mm, SD 14.1, 112 adults, CT (J Vasc Interv Radiol 2007, 10.1016/j.jvir.2007.06.002)",
                    Certainty.Seen),
                Isometric),
            Row(
                AtrialSpan, 65, 0.18, 0.85, 0,
                new(
                    "60 mm remembered without an edge; atrial depth 52 (20 adults, CMR) + 17.6 mm to the rim gives 70; no adult series found",
                    Certainty.Assumption),
                AtriumGrowth),
            Row(CavalBendFrontal, 10, 8, 0, 0, bend, Unscaled),
            Row(CavalBendSagittal, 35, 15, 0, 0, bend, Unscaled),
            Row(
                MouthOffset, 0, 5, 1, 0,
                new(
                    "3 mm, SD 3, 13 healthy adults; 10 mm, SD 5, 13 with patent foramen (PLoS One 2017, 10.1371/journal.pone.0173046); direction not given",
                    Certainty.Derived),
                Isometric),
            Row(IcajToHepaticVein, 20.1, 0.32, 1, 0, autopsy, Isometric),
            Row(IcajToRenalVein, 123, 0.13, 1, 0, autopsy, Isometric),
            Row(
                RenalVeinToIliacConfluence, 100, 0.15, 1, 0, new("about 100 mm, 70 to 130", Certainty.FromMemory),
                Isometric),
            Row(
                RightGroinSkinToIcaj, 425, 0.07, 0.9, 0,
                new(
                    "0.25 x height, SD 3 cm; no adult regression found; parts sum to 420 to 510 mm",
                    Certainty.Assumption),
                GroinGrowth),
            Row(
                LeftGroinExtra, 17, 8, 1, 0,
                new(
                    "10 to 20 mm remembered; common iliac veins of 7 and 5 cm (encyclopaedia)",
                    Certainty.SeenSecondHand),
                Isometric),
            Row(TricuspidFraction, 0.60, 0.08, 0, 0, vestibule, Unscaled),
            Row(TricuspidDistance, 30, 0.20, 0.85, 0, vestibule, AtriumGrowth),
            Row(
                TricuspidDiameter, 36, 0.11, 0, 0.5,
                new("long axis 36 mm, SD 4, 209 healthy adults, 3D ultrasound (ACC 2019)", Certainty.Seen),
                ValveGrowth),
            Row(
                SvcDiameter, 16.6, 0.215, 0, 0.55,
                new(
                    "area 1.08 to 4.42 cm2 (5 to 95 %), 103 healthy adults, gated CT; middle and spread from the two quantiles",
                    Certainty.Derived),
                SuperiorVeinGrowth),
            Row(
                IvcDiameter, 21.0, 0.20, 0, 0.70,
                new(
                    "16.9 x 26.2 mm, 200 adults, CT 2 cm below the atrium (Cureus 2022;14:e31845); spread widened for filling",
                    Certainty.Derived),
                InferiorVeinGrowth),
            Row(
                RightJugularVeinDiameter, 14.3, 0.29, 0, 0.58,
                new("median area 160 mm2, quartiles 108 and 235, 190 adults, CT (Crit Care cc8200)", Certainty.Derived),
                JugularGrowth),
            Row(
                LeftJugularVeinDiameter, 11.4, 0.36, 0, 0.58,
                new("median area 102 mm2, quartiles 63 and 168, same 190 adults", Certainty.Derived), JugularGrowth),
            Row(RightFemoralVeinDiameter, 12.0, 0.22, 0, 0.62, femoralVein, FemoralVeinGrowth, 0.94),
            Row(LeftFemoralVeinDiameter, 12.0, 0.22, 0, 0.62, LeftSide, FemoralVeinGrowth, 0.94),
            Row(RightFemoralArteryDiameter, 8.0, 0.16, 0, 0.62, femoralArtery, FemoralArteryGrowth, 0.85, 0.003),
            Row(LeftFemoralArteryDiameter, 8.0, 0.16, 0, 0.62, LeftSide, FemoralArteryGrowth, 0.85, 0.003),
            Row(RightAxillaryArteryDiameter, 6.0, 0.18, 0, 0.50, axillary, AxillaryGrowth, 0.90),
            Row(LeftAxillaryArteryDiameter, 6.0, 0.18, 0, 0.50, LeftSide, AxillaryGrowth, 0.90),
            Row(
                RightCarotidArteryDiameter, 6.3, 0.14, 0, 0.35,
                new(
                    "men 6.52 mm, SD 0.98, women 6.10, SD 0.80, 500 adults (Krejza 2006, Stroke 37:1103)",
                    Certainty.Seen),
                CarotidGrowth, 0.96),
        ];
        for (int i = 0; i < rows.Length; i++)
        {
            if ((int)rows[i].Dimension != i || rows.Length != AxisDimensions.Count)
            {
                throw new InvalidOperationException($"The population table is out of order at row {i}.");
            }
        }

        return rows;
    }

    private static PopulationParameter Row(
        AxisDimension dimension, double middle, double spread, double height, double bsa, Source source, Source growth, double femaleToMale = 1, double agePerYear = 0) =>
        new(dimension, middle, spread, height, bsa, femaleToMale, agePerYear, source, growth);
}
