using System.Collections.Immutable;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Mechanics.Insertion;

/// <summary>
/// Inserts devices into a lumen step by step, each a chain of states of rest. One anatomy at a time: its arrays are used
/// again and again, so it is not for two threads at once.
/// </summary>
public sealed class Inserter
{
    private readonly InsertionKit kit;
    private readonly InsertionSettings settings;
    private readonly AssemblyMove move;
    private readonly Sleeve sleeve;
    private readonly Relaxer relaxer = new();

    /// <summary>Makes ready.</summary>
    /// <param name="kit">Devices.</param>
    /// <param name="sleeve">Skin.</param>
    /// <param name="lumen">Inside of the vessels with the tract from the skin.</param>
    /// <param name="settings">How finely; the usual settings where not given.</param>
    public Inserter(InsertionKit kit, Sleeve sleeve, ILumen lumen, InsertionSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(sleeve);
        ArgumentNullException.ThrowIfNull(lumen);
        (this.kit, this.sleeve, this.settings) = (kit, sleeve, settings ?? new InsertionSettings());
        move = new AssemblyMove(kit, sleeve, lumen, this.settings);
    }

    /// <summary>Runs a script.</summary>
    /// <param name="script">Devices, skin and steps.</param>
    /// <param name="lumen">Inside of the vessels with the tract from the skin.</param>
    /// <param name="settings">How finely; the usual settings where not given.</param>
    /// <returns>One report for each step; the last one that was begun carries the fault, if there is one.</returns>
    /// <exception cref="InputFaultException">A step needs a device that the kit lacks.</exception>
    public static ImmutableArray<InsertionReport> Run(InsertionScript script, ILumen lumen, InsertionSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(script);
        Inserter inserter = new(script.Kit, script.Sleeve, lumen, settings);
        ImmutableArray<InsertionReport>.Builder reports = ImmutableArray.CreateBuilder<InsertionReport>(script.Steps.Length);
        InsertedAssembly assembly = InsertedAssembly.Empty;
        foreach (InsertionStep step in script.Steps)
        {
            InsertionReport report = inserter.Do(step, assembly);
            reports.Add(report);
            assembly = report.Assembly;
            if (!report.IsDone)
            {
                break;
            }
        }

        return reports.ToImmutable();
    }

    /// <summary>Does one step.</summary>
    /// <param name="step">Step.</param>
    /// <param name="from">All that is inserted before it.</param>
    /// <returns>The state after it, or the last state of rest and why it did not go on.</returns>
    /// <exception cref="InputFaultException">The step needs a device that the kit lacks.</exception>
    public InsertionReport Do(InsertionStep step, InsertedAssembly from)
    {
        ArgumentNullException.ThrowIfNull(step);
        ArgumentNullException.ThrowIfNull(from);
        StepPlan plan = new(step, kit, from);
        InsertionLog log = new(step, sleeve, from);
        if (plan.Fault is RodFault impossible)
        {
            return log.Report(0, impossible);
        }

        double largest = step.Action switch
        {
            InsertionAction.Rotate => settings.TurnRad,
            InsertionAction.AdvanceCannula => settings.AdvanceMm,
            InsertionAction.WithdrawWire or InsertionAction.WithdrawIntroducer or InsertionAction.WithdrawCannula => settings.WithdrawalMm,
            _ => settings.IncrementMm,
        };
        double least = largest / Math.Pow(2, settings.MostHalvings);
        double increment = largest;
        double done = 0;
        while (done < plan.Whole - 1e-9)
        {
            double next = Math.Min(plan.Whole, done + increment);
            if (!TryMove(plan, next, log, out RodFault? fault))
            {
                increment *= 0.5;
                if (increment < 0.999 * least)
                {
                    return log.Report(plan.Signed(done), fault);
                }

                continue;
            }

            done = next;
            increment = Math.Min(largest, 2 * increment);
        }

        return log.Report(plan.Signed(done), null);
    }

    private bool TryMove(StepPlan plan, double done, InsertionLog log, out RodFault? fault)
    {
        fault = null;
        InsertedDepths depths = plan.DepthsAt(done);
        double rotation = plan.RotationAt(done);
        if (depths.DeepestMm < 0.5 * settings.SpacingMm)
        {
            log.Keep(depths, rotation);
            return true;
        }

        (RelaxationTask task, ImmutableArray<double> arcs) = move.To(log.Assembly, depths, rotation);
        RelaxationResult result = relaxer.Relax(task, settings.Relaxation);
        log.Count(result.Steps);
        if (result.Fault is not null)
        {
            fault = result.Fault;
            return false;
        }

        log.Keep(depths, rotation, arcs, result);
        return true;
    }
}
