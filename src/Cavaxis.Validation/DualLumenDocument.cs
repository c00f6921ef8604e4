using System.Globalization;
using System.Text;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Validation;

/// <summary>Writes <c>docs/dual-lumen-by-height.md</c>: the curve, where it disagrees with practice, and what would have to change.</summary>
public static class DualLumenDocument
{
    private static readonly string[] Rules = ["dual-tip", "dual-return-port", "dual-superior-holes", "dual-inferior-holes"];

    /// <summary>The document, computed now.</summary>
    /// <returns>Markdown.</returns>
    public static string Write()
    {
        StringBuilder text = new();
        text.Append(
            """
            # Dual-lumen cannula and body height

            Written by the tests; do not edit by hand. Device: 31 Fr, insertable 310 mm, return port 94 mm from the tip, 30 mm left outside
            for fixing. Patient: a man of 45 years with a body mass index of 24, nothing measured. The number is the probability that
            some depth exists at which every port lies in its zone, to be found under imaging. Practice: a patient of 190 cm is not served
            (no stable position in the inferior caval vein), one of average height is. No population value and no zone was tuned to
            agree with it.

            Low entry is just above the clavicle, mid-neck entry at the cricoid cartilage. The tip zone of the built-in rule book is 30 to
            80 mm inside the inferior caval vein; the published one is 30 to 50 mm.

            ## Probability against height


            """);
        Curve(text);
        Crossings(text);
        Changes(text);
        Alone(text);
        Information(text);
        return text.ToString();
    }

    private static void Curve(StringBuilder text)
    {
        text.Append("| height, cm |");
        foreach (DualLumenSetting setting in DualLumenSetting.All)
        {
            text.Append(' ').Append(setting.Name).Append(" |");
        }

        text.Append("\n|---|").Append(string.Concat(DualLumenSetting.All.Select(_ => "---|"))).Append('\n');
        foreach (double height in DualLumenByHeight.Heights.Append(DualLumenByHeight.AverageHeightCm).Order())
        {
            text.Append(CultureInfo.InvariantCulture, $"| {height:F0} |");
            foreach (DualLumenSetting setting in DualLumenSetting.All)
            {
                text.Append(CultureInfo.InvariantCulture, $" {100 * DualLumenByHeight.Probability(setting, height):F0} % |");
            }

            text.Append('\n');
        }
    }

    private static void Crossings(StringBuilder text)
    {
        text.Append("\n## Height at which it falls under one half\n\n| setting | height, cm | against practice |\n|---|---|---|\n");
        foreach (DualLumenSetting setting in DualLumenSetting.All)
        {
            double? crossing = DualLumenByHeight.CrossingHeightCm(setting);
            bool average = DualLumenByHeight.Probability(setting, DualLumenByHeight.AverageHeightCm) >= 0.5;
            bool tall = DualLumenByHeight.Probability(setting, DualLumenByHeight.TallHeightCm) < 0.5;
            string where = crossing is double cm
                ? string.Create(CultureInfo.InvariantCulture, $"{cm:F0}")
                : "under one half from 150 to 205 cm";
            text.Append(CultureInfo.InvariantCulture, $"| {setting.Name} | {where} | {Verdict(average, tall)} |\n");
        }
    }

    private static string Verdict(bool average, bool tall) => (average, tall) switch
    {
        (true, true) => "agrees",
        (false, true) => "disagrees: 172 cm is not served either",
        (true, false) => "disagrees: 190 cm is served",
        _ => "disagrees at both heights",
    };

    private static void Changes(StringBuilder text)
    {
        text.Append(
            """

            ## What would have to change for one half

            One parameter at a time, everything else as it is. Entry lower and length outside shorter are the same millimetres: either
            puts one more millimetre of cannula inside. Negative numbers are what could be lost before one half is reached: an entry that
            much higher, or that much more left outside.

            | setting | height, cm | now | entry lower or less outside, mm | atrial span longer (+) or shorter (−), mm |
            |---|---|---|---|---|

            """);
        foreach (DualLumenSetting setting in DualLumenSetting.All)
        {
            foreach (double height in new[] { DualLumenByHeight.AverageHeightCm, DualLumenByHeight.TallHeightCm })
            {
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"| {setting.Name} | {height:F0} | {100 * DualLumenByHeight.Probability(setting, height):F0} % | {Change(DualLumenByHeight.ReachChangeMm(setting, height), "none up to 80 does it")} | {Change(DualLumenByHeight.SpanChangeMm(setting, height), "none up to 40 does it")} |\n");
            }
        }

        text.Append(
            """

            Reading: with a low entry the model and practice agree. With a mid-neck entry the model serves hardly anybody of average height;
            what would have to change is the entry (lower by the millimetres of the table) or the length outside, and no atrial span mends
            it. So either large cannulae are entered low in practice, or the model's depth from the mid-neck (height/10 + 0.3 cm, spread
            1.8 cm) is too long by that much. With the published tip zone of 30 to 50 mm the tip and a jet into the valve exclude each other
            in most anatomies at every height: the model's span and valve position, or the reading of the published zone, would
            have to give. The built-in book therefore accepts up to 80 mm and says so.

            """);
    }

    private static string Change(double? mm, string none) => mm is double value
        ? value.ToString("+0;−0;0", CultureInfo.InvariantCulture)
        : none;

    private static void Alone(StringBuilder text)
    {
        text.Append("\n## Which demand decides\n\nShare of anatomies in which a demand can be met by itself.\n\n| setting | height, cm | ");
        text.Append(string.Join(" | ", Rules)).Append(" |\n|---|---|---|---|---|---|\n");
        foreach (DualLumenSetting setting in new[] { DualLumenSetting.Low, DualLumenSetting.Mid })
        {
            foreach (double height in new[] { DualLumenByHeight.AverageHeightCm, DualLumenByHeight.TallHeightCm })
            {
                text.Append(CultureInfo.InvariantCulture, $"| {setting.Name} | {height:F0} |");
                foreach (string rule in Rules)
                {
                    text.Append(CultureInfo.InvariantCulture, $" {100 * DualLumenByHeight.Probability(setting, height, rule: rule):F0} % |");
                }

                text.Append('\n');
            }
        }

        text.Append(
            """

            A long body loses first the jet into the valve: the port, 94 mm above the tip, stays too high when the device ends too early. A
            tip at least 30 mm inside the inferior caval vein follows.

            """);
    }

    private static void Information(StringBuilder text)
    {
        text.Append(
            """

            ## What to measure next

            A man of 165 cm, depth from the skin to the superior junction measured (standard deviation 4 mm, the model's own edge),
            jugular vein measured and wide enough. Share of the variance of "every port can be brought into its zone", and of the
            suitable depth, that one more measurement of the axis would remove; about 1 % is the noise of the estimate. The fit hardly varies
            where nearly everybody fits.

            """);
        foreach (double depthMm in SampleCases.NeckDepthsMm)
        {
            MeasurementValue[] values = SampleCases.AxisMeasurements(depthMm);
            text.Append(CultureInfo.InvariantCulture, $"\nDepth {depthMm:F0} mm; variance of the fit now {values[0].FitVarianceNow:F2} of at most 0.25.\n\n");
            text.Append("| measurement | its error | fit | depth |\n|---|---|---|---|\n");
            foreach (MeasurementValue value in values)
            {
                string unit = value.Unit == "1" ? string.Empty : " " + value.Unit;
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"| {PlainWords.FromName(value.Dimension.ToString())} | {value.MeasurementSd:G3}{unit} | {100 * value.FitNarrowing:F0} % | {100 * value.DepthNarrowing:F0} % |\n");
            }
        }

        text.Append(
            """

            Measurements that would remove less than 1 % of both are left out; the caval bend is among them or near them. That is a
            property of this one-dimensional model, not of the bend: the way through the atrium is the curve of least bending, which
            shares the bend between both mouths, so that it runs nearly along the chord at the height of the valve (slope 0.2 tan(bend/2)
            at 0.6 of the way, about 2 mm of aim at 35 degrees), and the way grows by about a millimetre at 35 degrees. Where the bend matters
            is in mechanics: whether wire and cannula turn into the inferior caval vein, loop, or press on a wall. That is not computed
            here.

            """);
    }
}
