using System.Globalization;
using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Running;
using Cavaxis.Arteries.Solver;
using Cavaxis.Arteries.Support;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Arterial;

/// <summary>The arterial tree of a case: the service that command line and workspace call.</summary>
public static class ArteriesStudy
{
    /// <summary>Below this flow into the artery the tree is computed without a pump: the least that <see cref="ArterialSupportRequest"/> takes.</summary>
    private const double LeastFlowLPerMin = 0.2;

    /// <summary>Share of the work that a single result is of a question with a sweep.</summary>
    private const double SingleShare = 0.3;

    /// <summary>Computes it.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="progress">Told the share that is done, 0 to 1, on any thread; null for none.</param>
    /// <param name="cancellation">Ends the computation.</param>
    /// <returns>The answer, or one that says why there are no numbers.</returns>
    /// <exception cref="InputFaultException">A number is out of range.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static ArteriesAnswer Of(ArteriesQuestion question, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        CaseFile file = question.File;
        CirculationParameters circulation = question.Circulation;
        double share = circulation[CirculationParameter.ArterialShareOfReturn];
        bool arterial = question.Plan is { } plan ? ArteriesBasis.ReturnsToArtery(plan) : file.Running.Configuration is not null && share > 0;
        if (!arterial)
        {
            return ArteriesAnswer.None(file, question.Basis, ArteriesBasis.Venous);
        }

        PatientReading reading = new(file);
        List<string> assumed = [.. question.Assumed];
        double flow = circulation[CirculationParameter.TargetFlowLPerMin] * share;
        ArterialReturn entry = question.Plan is { } planned
            ? ArterialReturnFromCase.Of(planned, question.Catalogue)
            : ArterialReturnFromCase.Of(file, question.Catalogue, flow, reading, assumed);
        ArterialSupportRequest request = new(circulation, reading.Habitus, flow < LeastFlowLPerMin ? null : entry, flow)
        {
            Measured = [.. ArterialReturnFromCase.Measured(file)],
            WithIntervals = question.WithIntervals,
        };
        try
        {
            bool swept = question.SweepFlowsLPerMin.Count > 0;
            ArterialSupportResult result = ArterialSupport.Run(request, Part(progress, 0, swept ? SingleShare : 1), cancellation);
            return new ArteriesAnswer(
                ArteriesAnswer.CurrentVersion, Planner.Caution, file.Title ?? "(no title)", file.Invented, question.Basis, true, string.Empty, assumed, result,
                !swept ? [] : ArterialSupport.Sweep(
                    request, [.. question.SweepFlowsLPerMin.Select(q => Math.Max(LeastFlowLPerMin, q * share))],
                    question.SweepStrengths.Count == 0 ? [1] : question.SweepStrengths, Part(progress, SingleShare, 1 - SingleShare), cancellation));
        }
        catch (NotSettledException rest)
        {
            return ArteriesAnswer.None(file, question.Basis, string.Create(CultureInfo.InvariantCulture, $"The circulation that the tree stands on does not come to rest: {rest.Message}"));
        }
        catch (ArterialFlowException broken)
        {
            return ArteriesAnswer.None(file, question.Basis, string.Create(CultureInfo.InvariantCulture, $"The flow in the arteries left what the equations describe: {broken.Message}"));
        }
    }

    private static ShareOfWork? Part(IProgress<double>? whole, double from, double length) => whole is null ? null : new ShareOfWork(whole, from, length);

    private sealed class ShareOfWork(IProgress<double> whole, double from, double length) : IProgress<double>
    {
        public void Report(double value) => whole.Report(from + (length * value));
    }
}
