using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>Places in a scan and landmarks as typed.</summary>
internal static class AxisPlaces
{
    /// <summary>A place.</summary>
    /// <param name="option">Name of the option.</param>
    /// <param name="text">Three numbers with commas.</param>
    /// <param name="scan">The scan.</param>
    /// <param name="voxels">Whether they are voxels.</param>
    /// <returns>mm.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">It is none.</exception>
    public static Vector3D Place(string option, string text, ScanVolume scan, bool voxels)
    {
        string[] parts = text.Split(',');
        if (parts.Length != 3)
        {
            throw OptionNumbers.Refused(option, text, "three numbers with commas between them", "Such as -31.2,147.6,-505.8: to the left, the back and the head, mm.");
        }

        double x = OptionNumbers.Number(option, parts[0])!.Value;
        double y = OptionNumbers.Number(option, parts[1])!.Value;
        double z = OptionNumbers.Number(option, parts[2])!.Value;
        return voxels ? scan.Place(x, y, z) : new Vector3D(x, y, z);
    }

    /// <summary>A landmark that a person has seen.</summary>
    /// <param name="text">Name=place, with an edge behind @ where one was taken.</param>
    /// <param name="scan">The scan.</param>
    /// <param name="voxels">Whether the place is in voxels.</param>
    /// <exception cref="Quantities.Faults.InputFaultException">It is none.</exception>
    public static ConfirmedLandmark Landmark(string text, ScanVolume scan, bool voxels)
    {
        const string Option = "--confirm";
        string[] parts = text.Split('=');
        if (parts.Length != 2 || !Named(parts[0], out CavalLandmark landmark) || !TraceRequest.Accepted.Contains(landmark))
        {
            throw OptionNumbers.Refused(
                Option, text, $"one of {string.Join(", ", TraceRequest.Accepted.Select(static l => Planning.Json.JsonName.Of(l.ToString())))}, then = and a place", "Such as scaj=-33,144,-521.");
        }

        string[] place = parts[1].Split('@');
        JunctionEdge edge = JunctionEdge.Unknown;
        if (place.Length > 2 || (place.Length == 2 && !Named(place[1], out edge)))
        {
            throw OptionNumbers.Refused(Option, text, $"behind @ one of {string.Join(", ", Enum.GetNames<JunctionEdge>().Select(Planning.Json.JsonName.Of))}", "Leave the edge out where you do not know which one you took.");
        }

        Require(landmark, edge);
        return new ConfirmedLandmark(landmark, Place(Option, place[0], scan, voxels), edge);
    }

    // The edge must belong to the junction; the tables of the anatomy refuse any other.
    private static void Require(CavalLandmark landmark, JunctionEdge edge)
    {
        if (edge == JunctionEdge.Unknown)
        {
            return;
        }

        if (landmark == CavalLandmark.Scaj)
        {
            _ = JunctionEdges.Superior(edge);
        }
        else if (landmark == CavalLandmark.Icaj)
        {
            _ = JunctionEdges.Inferior(edge);
        }
        else
        {
            throw OptionNumbers.Refused("--confirm", edge.ToString(), "no edge for this landmark", "Only scaj and icaj have edges.");
        }
    }

    private static bool Named<T>(string word, out T value)
        where T : struct, Enum => Enum.TryParse(word, ignoreCase: true, out value) && Enum.IsDefined(value) && char.IsLetter(word[0]);
}
