using Cavaxis.Anatomy.Body;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Support;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Running;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Arterial;

/// <summary>How the blood of a plan or of running support enters an artery, and which arteries were measured.</summary>
internal static class ArterialReturnFromCase
{
    /// <summary>The return of a plan.</summary>
    /// <param name="plan">A plan that returns to an artery.</param>
    /// <param name="catalogue">Devices.</param>
    /// <returns>The return.</returns>
    public static ArterialReturn Of(CannulationPlan plan, DeviceCatalogue catalogue)
    {
        PlacedCannula back = plan.Cannulae.First(static c => c.Role == CannulaRole.ArterialReturn);
        PlacedCannula? distal = plan.Cannulae.FirstOrDefault(static c => c.Role == CannulaRole.DistalPerfusion);
        bool axillary = back.Route == AccessRoute.AxillaryGraft;
        return new ArterialReturn(
            Artery(axillary, back.Side), Device(catalogue, back.DeviceId), axillary, distal is null ? null : Device(catalogue, distal.DeviceId));
    }

    /// <summary>The return of running support; what the case does not say is assumed and listed.</summary>
    /// <param name="file">The case.</param>
    /// <param name="catalogue">Devices.</param>
    /// <param name="flowLPerMin">Flow to the artery.</param>
    /// <param name="reading">The numbers of planning.</param>
    /// <param name="assumed">Takes what is assumed.</param>
    /// <returns>The return.</returns>
    public static ArterialReturn Of(CaseFile file, DeviceCatalogue catalogue, double flowLPerMin, PatientReading reading, List<string> assumed)
    {
        RunningCannula? back = file.Running.Cannulae.FirstOrDefault(static c => c.Role == CannulaRole.ArterialReturn);
        RunningCannula? distal = file.Running.Cannulae.FirstOrDefault(static c => c.Role == CannulaRole.DistalPerfusion);
        bool axillary = file.Running.Configuration == RunningConfiguration.VaAxillary;
        Cannula cannula;
        if (back is not null && catalogue.FindCannula(back.Device) is Cannula known)
        {
            cannula = known;
        }
        else
        {
            cannula = CannulaSet.Usual(
                CannulaRole.ArterialReturn, flowLPerMin, 1, catalogue, new Fluid(reading.DensityKgPerM3, reading.Picture.BloodViscosityMPaS.Value * 1e-3));
            assumed.Add($"running.cannulae: arterial return {cannula.Id}, the smallest of the catalogue with a usual drop at this flow; matters for the leg");
        }

        if (back?.Side is null)
        {
            assumed.Add("running.cannulae.side: right; matters for which leg and which arm");
        }

        if (distal is null && !axillary)
        {
            assumed.Add("running.cannulae: no distal perfusion cannula, since none is named; matters for the leg");
        }

        return new ArterialReturn(
            Artery(axillary, back?.Side ?? BodySide.Right), cannula, axillary, distal is null ? null : Device(catalogue, distal.Device));
    }

    /// <summary>Diameters of access arteries that the survey measured.</summary>
    /// <param name="file">The case.</param>
    /// <returns>Diameters with their own error.</returns>
    public static IReadOnlyList<MeasuredDiameter> Measured(CaseFile file) =>
    [
        .. file.Vessels.Where(static v => v.DiameterMm is not null && v.Vessel is VesselName.CommonFemoralArtery or VesselName.AxillaryArtery)
            .Select(static v => new MeasuredDiameter(
                Artery(v.Vessel == VesselName.AxillaryArtery, v.Side), Estimate.Normal(v.DiameterMm!.Value, v.DiameterMm.Sd, Origin.Measured))),
    ];

    private static AccessArtery Artery(bool axillary, BodySide side) => (axillary, side) switch
    {
        (false, BodySide.Right) => AccessArtery.FemoralRight,
        (false, _) => AccessArtery.FemoralLeft,
        (true, BodySide.Right) => AccessArtery.AxillaryRight,
        _ => AccessArtery.AxillaryLeft,
    };

    private static Cannula Device(DeviceCatalogue catalogue, string id) =>
        catalogue.FindCannula(id) ?? throw new ArgumentException($"The catalogue has no {id}.", nameof(id));
}
