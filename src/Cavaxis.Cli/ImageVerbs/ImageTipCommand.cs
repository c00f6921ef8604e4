using System.Globalization;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Bedside.Images;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Imaging.Tips;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary><c>image tip</c>: where the tip lies, from a part of the device that was seen.</summary>
/// <param name="output">Where results go.</param>
public sealed class ImageTipCommand(CommandOutput output) : Command<ImageTipSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, ImageTipSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        int anatomies = OptionNumbers.Whole("--anatomies", settings.Anatomies, 20_000);
        int seed = OptionNumbers.Whole("--seed", settings.Seed, int.MaxValue);
        SeenDistance seen = Seen(settings);
        SkinSite entry = OptionWords.Choice<SkinSite>("--entry", settings.Entry);
        DeviceCourse course = OptionWords.Choice<DeviceCourse>("--course", settings.Course);
        SeenFeature feature = Feature(settings);
        CaseFile file = CaseInput.Read(settings.CasePath);
        Estimate? depth = OptionNumbers.Number("--depth-mm", settings.DepthMm) is double mm
            ? Estimate.Normal(Require.InRange(mm, 0, 700, "--depth-mm", "Give the depth at the skin in mm."), TipDefaults.DepthSdMm, Origin.Measured)
            : null;
        TipPlacement tip = TipFinder.Find(new TipQuestion(feature, seen, entry, course, depth, PatientAnatomies.BodyScale(file)), PatientAnatomies.Draw(file, anatomies, (ulong)seed), (ulong)seed);
        TipSheet sheet = new(
            feature.Name, feature.FromTipMm, tip.FromLandmarks, tip.Zones, tip.StraightMm, tip.AlongAxisMm, tip.AlongWallMm, tip.InPlaneMm, tip.BeyondSkinDepthMm, anatomies, seed, tip.Remarks);
        if (settings.Json)
        {
            output.Json(sheet);
        }
        else
        {
            Write(sheet, tip);
        }

        return (int)ExitCode.Done;
    }

    private static SeenDistance Seen(ImageTipSettings settings)
    {
        bool towardsFeet = settings.Side switch
        {
            "feet" => true,
            "head" => false,
            _ => throw OptionNumbers.Refused("--side", settings.Side ?? "(nothing)", "feet or head", "Say on which side of the landmark the part lies."),
        };
        double mm = OptionNumbers.Number("--distance-mm", settings.DistanceMm) ?? throw OptionNumbers.Refused("--distance-mm", "(nothing)", "a distance in mm", "Measure it on the picture: image measure.");
        double sd = Require.InRange(OptionNumbers.Number("--distance-sd-mm", settings.DistanceSdMm) ?? TipDefaults.DistanceSdMm, 0, 100, "--distance-sd-mm", "Give the standard deviation in mm.");
        PlaneTilt tilt = new(OptionNumbers.Number("--tilt-deg", settings.TiltDeg) ?? PlaneTilt.Usual.Degrees, OptionNumbers.Number("--tilt-sd-deg", settings.TiltSdDeg) ?? PlaneTilt.Usual.SdDegrees);
        return new SeenDistance(
            OptionWords.Choice<CavalLandmark>("--landmark", settings.Landmark), towardsFeet, Estimate.Normal(mm, sd, Origin.Measured),
            settings.AlongVein ? DistanceWay.AlongVein : DistanceWay.Straight, tilt, OptionWords.Choice<JunctionEdge>("--edge", settings.Edge));
    }

    private static SeenFeature Feature(ImageTipSettings settings)
    {
        switch (settings.Seen)
        {
            case null:
                throw OptionNumbers.Refused("--seen", "(nothing)", "tip, first hole, wire, or a group of holes", "Name the part that was seen.");
            case "tip":
                return SeenFeature.Tip;
            case "wire":
                double beyond = OptionNumbers.Number("--wire-beyond-mm", settings.WireBeyondMm) ?? throw OptionNumbers.Refused("--wire-beyond-mm", "(nothing)", "mm", "Say how far the wire reaches beyond the tip.");
                return SeenFeature.WireEnd(beyond, OptionNumbers.Number("--wire-sd-mm", settings.WireSdMm) ?? TipDefaults.WireSdMm);
        }

        string id = settings.Device ?? throw OptionNumbers.Refused("--device", "(nothing)", "the identifier of a cannula", "See cannula list.");
        Cannula cannula = CatalogueLoader.Load(settings.Catalogues).Cannula(id);
        return settings.Seen == "first hole" ? SeenFeature.FirstHole(cannula) : SeenFeature.Holes(cannula, settings.Seen, OptionWords.Choice<HolePart>("--hole", settings.Hole));
    }

    private void Write(TipSheet sheet, TipPlacement tip)
    {
        output.Wrapped("", string.Create(CultureInfo.InvariantCulture, $"Seen: {sheet.Seen}, {sheet.PartFromTipMm:F0} mm from the tip along the device."));
        foreach (LandmarkDistance distance in sheet.FromLandmarks)
        {
            string mark = distance.Landmark == tip.Question.Seen.Landmark ? " (measured from)" : "";
            output.Line($"tip from {PlainWords.FromName(distance.Landmark.ToString())}{mark}: {Words(distance.BelowMm)} mm, positive towards the feet");
        }

        output.Line("zones: " + string.Join(", ", sheet.Zones.Select(static z => $"{PlainWords.FromName(z.Zone.ToString())} {CommandOutput.Percent(z.Share.Value)}")));
        output.Line($"from the landmark measured from, straight through the atrium: {Words(sheet.StraightMm)} mm");
        output.Line($"  along the axis: {Words(sheet.AlongAxisMm)} mm; along the wall: {Words(sheet.AlongWallMm)} mm");
        output.Line($"  were the picture in the plane of the device: {Words(sheet.InPlaneMm)} mm");
        if (sheet.BeyondSkinDepthMm is Estimate beyond)
        {
            output.Line($"deeper than the depth at the skin tells: {Words(beyond)} mm");
        }

        foreach (string remark in sheet.Remarks)
        {
            output.Wrapped("  ", remark);
        }

        output.Wrapped("", string.Create(CultureInfo.InvariantCulture, $"{sheet.Anatomies} anatomies, seed {sheet.Seed}. ± is one standard deviation, in brackets nine tenths of the belief. {SheetWords.Caution}"));
    }

    private static string Words(Estimate value) => string.Create(CultureInfo.InvariantCulture, $"{value.Value:F0} ± {value.Sd:F0} ({value.Low:F0} to {value.High:F0})");
}
