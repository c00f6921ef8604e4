using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Course.Patients;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Reports.AxisDrawings;

namespace Cavaxis.Web.Pages.Images;

/// <summary>A cannula whose tip can be asked for: one that lies by the record, or one of the chosen plan.</summary>
/// <param name="Words">What it is, for people.</param>
/// <param name="Cannula">Its dimensions.</param>
/// <param name="Entry">Where it enters.</param>
/// <param name="InRecord">Its name in the record; null where it does not lie by the record, so that nothing can be written of its position.</param>
/// <param name="DepthCm">Depth at the skin as last written down, cm; null where it never was.</param>
public sealed record TipDevice(string Words, Cannula Cannula, SkinSite Entry, string? InRecord, double? DepthCm)
{
    /// <summary>Where it enters, in the drawing.</summary>
    public EntrySite Site => Entry switch
    {
        SkinSite.RightNeck => EntrySite.RightNeck,
        SkinSite.LeftNeck => EntrySite.LeftNeck,
        SkinSite.RightGroin => EntrySite.RightGroin,
        _ => EntrySite.LeftGroin,
    };

    /// <summary>1 where it points to the feet, −1 to the head.</summary>
    public int Direction => Entry is SkinSite.RightNeck or SkinSite.LeftNeck ? 1 : -1;

    /// <summary>Names of its groups of holes, each once.</summary>
    public IReadOnlyList<string> HoleGroups => [.. Cannula.Lumens.SelectMany(static l => l.HoleGroups).Select(static g => g.Name).Distinct()];

    /// <summary>True where it drains through holes.</summary>
    public bool Drains => Cannula.Lumens.Any(static l => l.Purpose == LumenPurpose.Drainage && l.HoleGroups.Count > 0);

    /// <summary>The cannulae that lie, then those of the plan, as far as they run along the cavae and are in the catalogue.</summary>
    /// <param name="course">The course.</param>
    /// <param name="plan">The chosen plan; null for none.</param>
    /// <param name="catalogue">The catalogue.</param>
    /// <returns>The cannulae.</returns>
    public static IReadOnlyList<TipDevice> Of(PatientCourse course, CannulationPlan? plan, DeviceCatalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(catalogue);
        IEnumerable<TipDevice> lying =
            from one in course.CannulaeIn
            let placed = one.Placed.Event
            let cannula = placed.Device is string id ? catalogue.FindCannula(id) : null
            let entry = SiteOf(placed.Route, placed.Side)
            where cannula is not null && entry is not null
            select new TipDevice($"{one.Name}, which lies: {cannula.Id}", cannula, entry.Value, one.Name, one.DepthCm);
        IEnumerable<TipDevice> planned =
            from one in plan?.Cannulae ?? []
            let cannula = catalogue.FindCannula(one.DeviceId)
            let entry = SiteOf(one.Route, one.Side)
            where cannula is not null && entry is not null
            select new TipDevice($"of the plan: {PlainWords.Role(one.Role)}, {PlainWords.Vessel(one.Route, one.Side)}: {cannula.Id}", cannula, entry.Value, null, null);
        return [.. lying, .. planned];
    }

    private static SkinSite? SiteOf(AccessRoute? route, BodySide? side) => (route, side) switch
    {
        (AccessRoute.Jugular, BodySide.Right) => SkinSite.RightNeck,
        (AccessRoute.Jugular, BodySide.Left) => SkinSite.LeftNeck,
        (AccessRoute.FemoralVein, BodySide.Right) => SkinSite.RightGroin,
        (AccessRoute.FemoralVein, BodySide.Left) => SkinSite.LeftGroin,
        _ => null,
    };
}
