using Cavaxis.Anatomy.Axis;
using Cavaxis.Quantities;
using static Cavaxis.Anatomy.Axis.AxisDimension;

namespace Cavaxis.Anatomy.Population;

/// <summary>The population table: every parameter with its source and certainty. Printed in the documentation and by the command line.</summary>
public static class PopulationTable
{
    private static readonly Source Isometric = new("lengths grow with body height (isometry)", Certainty.Assumption);
    private static readonly Source Unscaled = new("taken as the same at every size", Certainty.Assumption);
    private static readonly Source AtriumGrowth = new(
        "height^0.85: between isometry and the long intercaval axis of children after cavopulmonary anastomosis", Certainty.Assumption);

    private static readonly Source GroinGrowth = new(
        "height^0.9: fits femoral skin to L3 = 0.45 kg + 8.13 cm, 78 children of 3.1 to 33.8 kg", Certainty.Derived);

    private static readonly Source GreatVeinGrowth = new(
        "BSA^0.55: near the square root of BSA of great vessels (Kaiser 2008, J Cardiovasc Magn Reson 10:56, aorta)", Certainty.Derived);

    private static readonly Source JugularGrowth = new(
        "BSA^0.58: 3.6 mm at 1.4 to 4.5 kg (60 infants, area 10.2 mm2, Br J Anaesth 2010) and 4.5 to 5.0 mm in the smallest of 125 children (Lopez Alvarez 2018)", Certainty.Derived);

    private static readonly Source FemoralVeinGrowth = new(
        "BSA^0.62: 2.5 mm in the smallest of 125 children (Lopez Alvarez 2018) and 4.5 mm in young infants (Warkentine 2008)", Certainty.Derived);

    private static readonly Source FemoralArteryGrowth = new(
        "BSA^0.62: 1.9 mm at 2.0 to 2.5 kg (99 infants by ultrasound, congress abstract)", Certainty.Derived);

    private static readonly Source AxillaryGrowth = new("BSA^0.50: 1.9 mm at 2.0 to 2.5 kg (same 99 infants)", Certainty.Derived);

    private static readonly Source CarotidGrowth = new("BSA^0.35: 2.8 mm at 2.0 to 2.5 kg (same 99 infants)", Certainty.Derived);

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
        Source femoralArtery = new("men 9 to 10, women about 8 beyond 60 years (Sandgren 1999, J Vasc Surg 29:503; growth with age and BSA seen, figures not)", Certainty.FromMemory);
        Source femoralVein = new("area 114 mm2 = 12.0 mm, SD 35 mm2, 205 adults of 19 to 39 years (Czyzewska 2017, PLoS One 12:e0182623); sex ratio remembered", Certainty.Derived);
        Source axillary = new("minimum lumen 6.0 mm, SD 1.1, 208 elderly adults (CCI 2018;91:150); sex ratio assumed", Certainty.Seen);
        Source annulus = new("long axis 36 mm, SD 4, 209 healthy adults, 3D ultrasound (ACC 2019)", Certainty.Seen);
        Source bend = new("180 deg less 160 deg between the caval axes, SD 10, no published mean; split over the planes, descending axis turning left and back", Certainty.Assumption);
        Source vestibule = new("centre at 0.55 to 0.65 of the way, 25 to 35 mm in front and to the left", Certainty.FromMemory);
        PopulationParameter[] rows =
        [
            Row(RightNeckSkinToScaj, 173, NeckDepthLaw.MidNeckRelativeSpread, 1, 0, NeckDepthLaw.AdultSource, NeckDepthLaw.ChildSource),
            Row(LeftNeckExtra, 35, 10, 1, 0, new("Peres 1990 gives + 4 cm for the left; brachiocephalic veins 20-30 and 60 mm give 30 to 40", Certainty.Derived), Isometric),
            Row(SvcLength, 70.7, 0.20, 1, 0, new("70.7 mm, SD 14.1, 112 adults, CT (J Vasc Interv Radiol 2007, 10.1016/j.jvir.2007.06.002)", Certainty.Seen), Isometric),
            Row(AtrialSpan, 60, 0.18, 0.85, 0, new("about 60 mm, 45 to 75; no published adult figure found", Certainty.FromMemory), AtriumGrowth),
            Row(CavalBendFrontal, 12, 9, 0, 0, bend, Unscaled),
            Row(CavalBendSagittal, 13, 10, 0, 0, bend, Unscaled),
            Row(MouthOffset, 5, 8, 1, 0, new("offset 10 mm, SD 6, of unknown direction; taken towards the side of the bend more often than not", Certainty.Assumption), Isometric),
            Row(IcajToHepaticVein, 37.7, 0.24, 1, 0, new("29.1 + 8.6 mm, 100 autopsies (Indian J Gastroenterol 2001;20:136); SD 9 mm assumed", Certainty.Derived), Isometric),
            Row(IcajToRenalVein, 140.6, 0.12, 1, 0, new("sum of five segments, same 100 autopsies; SD 17 mm assumed", Certainty.Derived), Isometric),
            Row(RenalVeinToIliacConfluence, 100, 0.15, 1, 0, new("about 100 mm, 70 to 130", Certainty.FromMemory), Isometric),
            Row(RightGroinSkinToIcaj, 425, 0.07, 0.9, 0, new("0.25 x height, SD 3 cm; no adult regression found, parts sum to 420 to 510 mm", Certainty.Derived), GroinGrowth),
            Row(LeftGroinExtra, 15, 8, 1, 0, new("10 to 20 mm, longer left common iliac vein", Certainty.FromMemory), Isometric),
            Row(TricuspidFraction, 0.60, 0.08, 0, 0, vestibule, Unscaled),
            Row(TricuspidDistance, 30, 0.20, 0.85, 0, vestibule, AtriumGrowth),
            Row(TricuspidDiameter, 36, 0.11, 0, 0.5, annulus, ValveGrowth),
            Row(SvcDiameter, 16.6, 0.215, 0, 0.55, new("area 1.08 to 4.42 cm2 (5 to 95 %), 103 healthy adults, gated CT; middle and spread from the two quantiles", Certainty.Derived), GreatVeinGrowth),
            Row(IvcDiameter, 21.0, 0.20, 0, 0.55, new("16.9 x 26.2 mm, 200 adults, CT 2 cm below the atrium (Cureus 2022;14:e31845); spread widened for filling", Certainty.Derived), GreatVeinGrowth),
            Row(RightJugularVeinDiameter, 14.3, 0.29, 0, 0.58, new("median area 160 mm2, quartiles 108 and 235, 190 adults, CT (Crit Care cc8200)", Certainty.Derived), JugularGrowth),
            Row(LeftJugularVeinDiameter, 11.4, 0.36, 0, 0.58, new("median area 102 mm2, quartiles 63 and 168, same 190 adults", Certainty.Derived), JugularGrowth),
            Row(RightFemoralVeinDiameter, 12.0, 0.22, 0, 0.62, femoralVein, FemoralVeinGrowth, 0.94),
            Row(LeftFemoralVeinDiameter, 12.0, 0.22, 0, 0.62, LeftSide, FemoralVeinGrowth, 0.94),
            Row(RightFemoralArteryDiameter, 7.7, 0.16, 0, 0.62, femoralArtery, FemoralArteryGrowth, 0.92, 0.003),
            Row(LeftFemoralArteryDiameter, 7.7, 0.16, 0, 0.62, LeftSide, FemoralArteryGrowth, 0.92, 0.003),
            Row(RightAxillaryArteryDiameter, 6.0, 0.18, 0, 0.50, axillary, AxillaryGrowth, 0.92),
            Row(LeftAxillaryArteryDiameter, 6.0, 0.18, 0, 0.50, LeftSide, AxillaryGrowth, 0.92),
            Row(RightCarotidArteryDiameter, 6.3, 0.14, 0, 0.35, new("men 6.52 mm, SD 0.98, women 6.10, SD 0.80, 500 adults (Krejza 2006, Stroke 37:1103)", Certainty.Seen), CarotidGrowth, 0.96),
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
