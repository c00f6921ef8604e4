using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Search;

namespace Cavaxis.Planning.Insertion;

/// <summary>
/// The sampled curved anatomies of one patient, and what was already inserted into them: plans share cannulae, and the same
/// cannula through the same skin to the same depth goes the same way.
/// </summary>
internal sealed class InsertionPatient
{
    private readonly Dictionary<InsertionTask, AnatomyOutcome[]> known = [];

    /// <summary>Samples them.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="anatomies">How many.</param>
    /// <param name="seed">Seed.</param>
    public InsertionPatient(CaseFile caseFile, int anatomies, ulong seed)
    {
        AxisDistribution belief = AxisFromCase.Distribution(caseFile, new PatientReading(caseFile).Habitus);
        AxisSamples samples = AxisSampler.Draw(belief, anatomies, seed);
        Shapes = [.. Enumerable.Range(0, samples.Count).Select(i => LumenShape.OfSample(samples, i, seed))];
        Middle = LumenShape.OfMedians(belief);
        Seed = seed;
    }

    /// <summary>The sampled anatomies.</summary>
    public IReadOnlyList<LumenShape> Shapes { get; }

    /// <summary>The anatomy at the middles of all beliefs.</summary>
    public LumenShape Middle { get; }

    /// <summary>Seed of anatomies and unknowns.</summary>
    public ulong Seed { get; }

    /// <summary>What happens in the sampled anatomies.</summary>
    /// <param name="task">What is inserted.</param>
    /// <param name="counter">Told after every insertion.</param>
    /// <param name="cancellation">Ends the computation between anatomies.</param>
    /// <returns>One outcome for each anatomy.</returns>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public AnatomyOutcome[] Outcomes(InsertionTask task, InsertionCounter counter, CancellationToken cancellation)
    {
        if (known.TryGetValue(task, out AnatomyOutcome[]? there))
        {
            counter.Count(there.Length);
            return there;
        }

        AnatomyOutcome[] outcomes = First(Shapes.Count, task, counter, cancellation);
        known.Add(task, outcomes);
        return outcomes;
    }

    /// <summary>What happens in the first of them.</summary>
    /// <param name="count">In how many.</param>
    /// <param name="task">What is inserted.</param>
    /// <param name="counter">Told after every insertion.</param>
    /// <param name="cancellation">Ends the computation between anatomies.</param>
    /// <returns>One outcome for each.</returns>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public AnatomyOutcome[] First(int count, InsertionTask task, InsertionCounter counter, CancellationToken cancellation)
    {
        AnatomyOutcome[] outcomes = new AnatomyOutcome[count];
        Parallel.For(
            0,
            count,
            new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount, CancellationToken = cancellation },
            i =>
            {
                outcomes[i] = In(i, task).Outcome;
                counter.Count(1);
            });
        return outcomes;
    }

    /// <summary>Inserts into one sampled anatomy with its own luck.</summary>
    /// <param name="index">Which, from 0.</param>
    /// <param name="task">What is inserted.</param>
    public AnatomyInsertion In(int index, InsertionTask task) => new(task, Shapes[index], InsertionUnknowns.Draw(task.Wire, task.Stiffness, (uint)index, Seed));

    /// <summary>Inserts into the middle anatomy with the middle of every unknown.</summary>
    /// <param name="task">What is inserted.</param>
    public AnatomyInsertion InMiddle(InsertionTask task) => new(task, Middle, InsertionUnknowns.Middle(task.Wire, task.Stiffness));
}
