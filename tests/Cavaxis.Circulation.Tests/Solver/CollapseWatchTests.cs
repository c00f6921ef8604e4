using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Circulation.Solver;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Tests.Solver;

public class CollapseWatchTests
{
    private static readonly CirculationParameters Drained = CirculationParameters.Adult
        .With(CircuitOn, 1).With(ShuntFraction, 0.5).With(TargetFlowLPerMin, 6).With(BloodVolumeMl, 3800);

    [Fact]
    public void Each_collapse_is_found_where_the_filling_crosses_the_mark()
    {
        LaneIntegrator<OneLane> integrator = Start(Drained);
        CollapseWatch watch = new(Drained);
        integrator.Run([30], watch);
        Assert.NotEmpty(watch.Events);
        Assert.Contains(watch.Events, static e => e.Collapses);

        // A second run to the moment of the first event stands on the mark.
        CollapseEvent first = watch.Events[0];
        LaneIntegrator<OneLane> again = Start(Drained);
        again.Run([first.TimeS]);
        (int index, CirculationParameter zero) = first.Vein switch
        {
            CollapsibleVein.SuperiorCava => (StateIndex.SuperiorCava, SuperiorCavaZeroVolumeMl),
            CollapsibleVein.ThoracicInferiorCava => (StateIndex.ThoracicCava, ThoracicCavaZeroVolumeMl),
            _ => (StateIndex.AbdominalCava, AbdominalCavaZeroVolumeMl),
        };
        Assert.Equal(CollapseWatch.CollapsedFilling, again.State[index].Value / Drained[zero], 3);
    }

    [Fact]
    public void Events_of_a_vein_alternate()
    {
        LaneIntegrator<OneLane> integrator = Start(Drained);
        CollapseWatch watch = new(Drained);
        integrator.Run([30], watch);
        foreach (IGrouping<CollapsibleVein, CollapseEvent> vein in watch.Events.GroupBy(static e => e.Vein))
        {
            CollapseEvent[] events = [.. vein];
            Assert.All(events.Skip(1).Zip(events), static pair => Assert.NotEqual(pair.First.Collapses, pair.Second.Collapses));
        }
    }

    private static LaneIntegrator<OneLane> Start(CirculationParameters patient)
    {
        LaneIntegrator<OneLane> integrator = new(new CirculationEquations<OneLane>(new ModelConstants<OneLane>([patient])), [1], Tolerance.Usual);
        integrator.SetState([.. InitialState.Of(patient).Select(static v => new OneLane(v))]);
        return integrator;
    }
}
