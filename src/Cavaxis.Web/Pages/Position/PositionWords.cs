using System.Globalization;
using Cavaxis.Anatomy.Body;
using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Web.Pages.Position;

/// <summary>Plain words for where a cannula lies.</summary>
internal static class PositionWords
{
    /// <summary>What a cannula is: role, size, vessel.</summary>
    public static string Of(CannulaPlaced placed)
    {
        List<string> parts = [PlainWords.Role(placed.Role)];
        if (placed.OuterDiameterFrench is double french)
        {
            parts.Add(string.Create(CultureInfo.InvariantCulture, $"{french:0.#} Fr"));
        }

        if (placed.Route is AccessRoute route)
        {
            parts.Add(placed.Side is BodySide side ? PlainWords.Vessel(route, side) : PlainWords.Route(route));
        }

        return string.Join(", ", parts);
    }

    /// <summary>A depth; never without its unit.</summary>
    public static string Depth(double? depthCm) => depthCm is double depth ? string.Create(CultureInfo.InvariantCulture, $"{depth:0.#} cm") : "not written down";

    /// <summary>A place along the axis.</summary>
    public static string Of(PortPlace place)
    {
        string way = place.OffsetCm switch
        {
            0 => "at",
            > 0 => string.Create(CultureInfo.InvariantCulture, $"{place.OffsetCm:0.#}{Error(place)} cm below"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{-place.OffsetCm:0.#}{Error(place)} cm above"),
        };
        return $"{way} {PlainWords.FromName(place.Landmark.ToString())} ({(place.IsInferred ? "calculated" : "measured")})";
    }

    /// <summary>The log of a cannula, newest first: when, who, and what was read or moved.</summary>
    public static IReadOnlyList<PositionLine> LogOf(LyingCannula cannula) =>
    [
        .. cannula.Positions.Select(static p => new PositionLine(p.OccurredAt, p.Sequence, p.Who, Of(p.Event), PlainWords.FromName(p.Event.SeenBy.ToString()), p.Event.SeenBy != PositionSight.SkinMark))
            .Concat(cannula.Moves.Select(static m => new PositionLine(m.OccurredAt, m.Sequence, m.Who, Of(m.Event), m.Event.SeenBy is PositionSight sight ? PlainWords.FromName(sight.ToString()) : "not watched", false)))
            .Append(new PositionLine(cannula.Placed.OccurredAt, cannula.Placed.Sequence, cannula.Placed.Who, $"placed at {Depth(cannula.Placed.Event.DepthCm)}", string.Empty, false))
            .OrderByDescending(static l => l.At).ThenByDescending(static l => l.Sequence),
    ];

    /// <summary>What the form for a cannula of the chosen plan is filled with.</summary>
    public static IReadOnlyDictionary<string, string> Known(PlannedCannula planned, double? french)
    {
        Dictionary<string, string> known = new()
        {
            ["cannula"] = PlainWords.Role(planned.Role),
            ["role"] = JsonName.Of(planned.Role.ToString()),
            ["device"] = planned.Device,
            ["route"] = JsonName.Of(planned.Route.ToString()),
            ["side"] = JsonName.Of(planned.Side.ToString()),
        };
        if (french is double size)
        {
            known["outerDiameterFrench"] = size.ToString("0.#", CultureInfo.InvariantCulture);
        }

        return known;
    }

    private static string Error(PortPlace place) => place.SdCm is double sd ? string.Create(CultureInfo.InvariantCulture, $" ± {sd:0.#}") : string.Empty;

    private static string Of(PositionRead read)
    {
        List<string> parts = [];
        Add(parts, "at the skin", read.DepthCm is double depth ? Depth(depth) : null);
        Add(parts, "turned", read.TurnDeg is double turn ? string.Create(CultureInfo.InvariantCulture, $"{turn:0}°") : null);
        Add(parts, "tip", read.Tip is { } tip ? Of(tip) : null);
        Add(parts, "return port", read.ReturnPort is { } port ? Of(port) : null);
        Add(parts, "first hole", read.FirstHole is { } hole ? Of(hole) : null);
        return string.Join("; ", parts);
    }

    private static string Of(CannulaMoved moved)
    {
        List<string> parts = [];
        Add(parts, "moved to", moved.DepthCm is double depth ? Depth(depth) : null);
        Add(parts, "turned to", moved.TurnDeg is double turn ? string.Create(CultureInfo.InvariantCulture, $"{turn:0}°") : null);
        return $"{string.Join("; ", parts)}: {moved.Reason}";
    }

    private static void Add(List<string> parts, string before, string? value)
    {
        if (value is not null)
        {
            parts.Add($"{before} {value}");
        }
    }
}
