using Cavaxis.Planning.Placing;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Web.Pages.Lie;

/// <summary>
/// Lets the numbers of a plan follow a hand: ports and probabilities at once, the circulation of one patient right after, that of all
/// when the hand rests. Only the newest place is computed. May be used by many threads.
/// </summary>
internal sealed class PlaceFollower : IDisposable
{
    private static readonly TimeSpan Late = TimeSpan.FromMilliseconds(100);
    private static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(350);

    private readonly PlanPlacing placing;
    private readonly Action changed;
    private readonly CancellationTokenSource leaving = new();
    private readonly Lock gate = new();
    private readonly SemaphoreSlim moved = new(0);
    private bool running;

    /// <summary>Begins with a plan.</summary>
    /// <param name="placing">The plan.</param>
    /// <param name="places">Where its cannulae lie.</param>
    /// <param name="changed">Told when numbers are new. Comes on any thread.</param>
    public PlaceFollower(PlanPlacing placing, IReadOnlyList<CannulaPlace> places, Action changed)
    {
        (this.placing, this.changed) = (placing, changed);
        (Places, Fit) = (places, placing.Fit(places));
        if (IsPlanned && Plan.Circulation is CirculationOutlook known)
        {
            Circulation = new PlacingCirculation(
                known.Members - known.NotSettled, known.RecirculationPercent, known.RightArmSaturationPercent, known.DeliveryToConsumption, string.Empty);
        }

        Follow();
    }

    /// <summary>The plan.</summary>
    public CannulationPlan Plan => placing.Plan;

    /// <summary>Where its cannulae lie.</summary>
    public IReadOnlyList<CannulaPlace> Places { get; private set; }

    /// <summary>Number of the move that <see cref="Fit"/> belongs to.</summary>
    public int Sequence { get; private set; }

    /// <summary>Ports and probabilities.</summary>
    public PlacingFit Fit { get; private set; }

    /// <summary>The circulation, of one patient or of all; null before the first is computed.</summary>
    public PlacingCirculation? Circulation { get; private set; }

    /// <summary>Number of the move that <see cref="Circulation"/> belongs to.</summary>
    public int CirculationSequence { get; private set; }

    /// <summary>True when the circulation is later than a person takes for at once.</summary>
    public bool IsLate { get; private set; }

    /// <summary>True when everything lies as planned.</summary>
    public bool IsPlanned => Places.SequenceEqual(placing.Planned);

    /// <summary>Moves the cannulae.</summary>
    /// <param name="sequence">Number of the move, growing.</param>
    /// <param name="places">Where they lie now.</param>
    /// <exception cref="InputFaultException">A place that the device cannot have.</exception>
    public void Move(int sequence, IReadOnlyList<CannulaPlace> places)
    {
        PlacingFit fit = placing.Fit(places);
        lock (gate)
        {
            (Places, Fit, Sequence) = (places, fit, sequence);
        }

        moved.Release();
        Follow();
        _ = TellLateAsync(sequence);
    }

    /// <summary>Ends it.</summary>
    public void Dispose()
    {
        leaving.Cancel();
        leaving.Dispose();
        moved.Dispose();
    }

    private void Follow()
    {
        lock (gate)
        {
            if (running || leaving.IsCancellationRequested)
            {
                return;
            }

            running = true;
        }

        _ = Task.Run(() => FollowAsync(leaving.Token));
    }

    private async Task FollowAsync(CancellationToken until)
    {
        try
        {
            for (bool again = true; again;)
            {
                while (moved.Wait(0, CancellationToken.None))
                {
                    // The moves up to now are those that are taken next.
                }

                (int sequence, IReadOnlyList<CannulaPlace> places) = Now();
                Take(sequence, placing.CirculationOfMiddle(places));

                // A move ends the rest at once.
                if (await moved.WaitAsync(Rest, until))
                {
                    continue;
                }

                // All patients take longer: beside this loop, so that a move meanwhile is followed at once.
                _ = Task.Run(() => Take(sequence, placing.Circulation(places)), until);
                lock (gate)
                {
                    again = Sequence != sequence;
                    running = again;
                }
            }
        }
        catch (Exception left) when (left is OperationCanceledException or ObjectDisposedException)
        {
            // The page was left.
        }
    }

    private (int Sequence, IReadOnlyList<CannulaPlace> Places) Now()
    {
        lock (gate)
        {
            return (Sequence, Places);
        }
    }

    private void Take(int sequence, PlacingCirculation circulation)
    {
        lock (gate)
        {
            // What is known of all patients is not replaced by what one of them says, nor a newer place by an older one.
            bool less = sequence == CirculationSequence && Circulation is { Members: > 1 } && circulation.Members <= 1;
            if (less || sequence < CirculationSequence)
            {
                return;
            }

            (Circulation, CirculationSequence, IsLate) = (circulation, sequence, sequence != Sequence && IsLate);
        }

        changed();
    }

    private async Task TellLateAsync(int sequence)
    {
        await Task.Delay(Late);
        bool late;
        lock (gate)
        {
            late = Sequence == sequence && CirculationSequence != sequence && !leaving.IsCancellationRequested;
            IsLate |= late;
        }

        if (late)
        {
            changed();
        }
    }
}
