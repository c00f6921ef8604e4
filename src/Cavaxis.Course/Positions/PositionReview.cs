using System.Globalization;
using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;

namespace Cavaxis.Course.Positions;

/// <summary>What changed about the position of a cannula since an image last showed it.</summary>
/// <param name="Cannula">The cannula.</param>
/// <param name="LastImaged">The last position that an image showed; null where none did.</param>
/// <param name="ConfirmedDepthCm">Depth at the skin at that image, cm: as read with it, or the last one written down before it; null where there is none.</param>
/// <param name="DepthShiftCm">Depth now less that depth, cm; null where one of the two is not known.</param>
/// <param name="TurnShiftDeg">Turn now less the turn at that image, degrees, −180 to 180; null where one of the two is not known.</param>
/// <param name="MovesSince">Moves since that image, oldest first; all where there is none.</param>
/// <param name="Warnings">What should be known.</param>
public sealed record PositionReview(
    LyingCannula Cannula,
    Logged<PositionRead>? LastImaged,
    double? ConfirmedDepthCm,
    double? DepthShiftCm,
    double? TurnShiftDeg,
    IReadOnlyList<Logged<CannulaMoved>> MovesSince,
    IReadOnlyList<PositionWarning> Warnings)
{
    // Depths are written down to a tenth of a centimetre; the difference of two such numbers is not exact in binary.
    private const double Rounding = 1e-6;

    /// <summary>Reviews a cannula.</summary>
    /// <param name="cannula">The cannula as the record tells that it lies.</param>
    /// <returns>The review.</returns>
    public static PositionReview Of(LyingCannula cannula)
    {
        ArgumentNullException.ThrowIfNull(cannula);
        Logged<PositionRead>? imaged = cannula.LastImaged;
        Logged<CannulaMoved>[] moves = [.. cannula.Moves.Where(m => imaged is null || IsAfter(m.OccurredAt, m.Sequence, imaged))];
        double? confirmed = imaged is null ? null : At(cannula, imaged, static r => r.DepthCm, static m => m.DepthCm, cannula.Placed.Event.DepthCm);
        double? turned = imaged is null ? null : At(cannula, imaged, static r => r.TurnDeg, static m => m.TurnDeg, cannula.Placed.Event.TurnDeg);
        double? depthShift = cannula.DepthCm - confirmed;
        double? turnShift = cannula.TurnDeg - turned is double turn ? Math.IEEERemainder(turn, 360) : null;
        return new PositionReview(cannula, imaged, confirmed, depthShift, turnShift, moves, [.. Warn(cannula, imaged, confirmed, depthShift, turnShift, moves)]);
    }

    private static IEnumerable<PositionWarning> Warn(
        LyingCannula cannula, Logged<PositionRead>? imaged, double? confirmed, double? depthShift, double? turnShift, Logged<CannulaMoved>[] moves)
    {
        if (!cannula.IsIn)
        {
            yield break;
        }

        if (imaged is null)
        {
            yield return new PositionWarning($"No image of \"{cannula.Name}\" is in this record: where its tip and ports lie is not known.", null);
        }

        if (depthShift is double shift && Math.Abs(shift) > PositionRule.Depth.Limit + Rounding)
        {
            yield return new PositionWarning(
                string.Create(CultureInfo.InvariantCulture, $"\"{cannula.Name}\" is at {cannula.DepthCm:0.#} cm at the skin; an image last showed it at {confirmed:0.#} cm, {Math.Abs(shift):0.#} cm {(shift > 0 ? "less deep" : "deeper")} than now."),
                PositionRule.Depth);
        }

        if (turnShift is double turn && Math.Abs(turn) > PositionRule.Turn.Limit + Rounding)
        {
            yield return new PositionWarning(
                string.Create(CultureInfo.InvariantCulture, $"\"{cannula.Name}\" is turned {Math.Abs(turn):0}° from where an image last showed it."), PositionRule.Turn);
        }

        if (imaged is not null && moves.Length > 0)
        {
            yield return new PositionWarning(
                string.Create(CultureInfo.InvariantCulture, $"\"{cannula.Name}\" was moved {moves.Length} {(moves.Length == 1 ? "time" : "times")} since an image last showed it."), null);
        }
    }

    private static bool IsAfter(DateTimeOffset at, long sequence, Logged<PositionRead> imaged) => at > imaged.OccurredAt || (at == imaged.OccurredAt && sequence > imaged.Sequence);

    /// <summary>What held at the image: as read with it, or the last value that was written down for a time before it.</summary>
    private static double? At(LyingCannula cannula, Logged<PositionRead> imaged, Func<PositionRead, double?> ofReading, Func<CannulaMoved, double?> ofMove, double? placed) =>
        ofReading(imaged.Event)
        ?? cannula.Positions.Select(r => (r.OccurredAt, r.Sequence, Value: ofReading(r.Event)))
            .Concat(cannula.Moves.Select(m => (m.OccurredAt, m.Sequence, Value: ofMove(m.Event))))
            .Where(v => v.Value is not null && !IsAfter(v.OccurredAt, v.Sequence, imaged))
            .OrderBy(static v => v.OccurredAt).ThenBy(static v => v.Sequence)
            .Select(static v => v.Value).LastOrDefault()
        ?? placed;
}
