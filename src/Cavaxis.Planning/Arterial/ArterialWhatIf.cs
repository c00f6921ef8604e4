using Cavaxis.Arteries.Findings;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Running;

namespace Cavaxis.Planning.Arterial;

/// <summary>What a change would do in the arterial tree.</summary>
public static class ArterialWhatIf
{
    /// <summary>Computes the tree before and after.</summary>
    /// <param name="file">The case whose support runs.</param>
    /// <param name="catalogue">Devices.</param>
    /// <param name="before">The circulation before.</param>
    /// <param name="changes">The changes.</param>
    /// <param name="cancellation">Ends the computation.</param>
    /// <returns>The change, or why there is none.</returns>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static ArterialChange Of(
        CaseFile file, DeviceCatalogue catalogue, CirculationParameters before, IReadOnlyList<RequestedChange> changes, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArteriesQuestion question = new(file, catalogue, before, null, string.Empty, []) { WithIntervals = false };
        ArteriesAnswer first = ArteriesStudy.Of(question, null, cancellation);
        if (first.Result is not ArterialSupportResult was)
        {
            return new ArterialChange(string.Empty, string.Empty, [], first.Reason);
        }

        ArteriesAnswer second = ArteriesStudy.Of(question with { Circulation = ChangeReader.Apply(before, changes) }, null, cancellation);
        return second.Result is ArterialSupportResult now ? Between(was, now) : new ArterialChange(string.Empty, string.Empty, [], second.Reason);
    }

    /// <summary>The change between two results.</summary>
    /// <param name="before">The result before.</param>
    /// <param name="after">The result after, of the same patient.</param>
    /// <returns>The change.</returns>
    public static ArterialChange Between(ArterialSupportResult before, ArterialSupportResult after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return new ArterialChange(
            Words(before), Words(after),
            [
                .. before.Organs.Zip(after.Organs, static (b, a) => new ArterialChangeRow("saturation, " + b.Title, "%", b.SaturationPercent.Mean, a.SaturationPercent.Mean)),
                .. before.Limbs.Zip(after.Limbs, static (b, a) => new ArterialChangeRow(
                    b.Side == Anatomy.Body.BodySide.Right ? "flow, right leg" : "flow, left leg", "mL/min", b.FlowMlPerMin.Value, a.FlowMlPerMin.Value)),
                new ArterialChangeRow("output of the heart", "L/min", before.Heart.NativeOutputLPerMin, after.Heart.NativeOutputLPerMin),
            ],
            string.Empty);
    }

    private static string Words(ArterialSupportResult result) => result.Mixing?.PlaceInWords ?? "nowhere";
}
