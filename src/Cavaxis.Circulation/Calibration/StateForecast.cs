using Cavaxis.Circulation.Parameters;
using static Cavaxis.Circulation.Parameters.CirculationParameter;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Calibration;

/// <summary>
/// Guesses the settled state of a place near others whose states are known, so that settling begins near its end. The guess does not
/// touch the result: whether a breath repeats itself is judged as ever.
/// </summary>
internal sealed class StateForecast
{
    // A guess may not leave this share of the known state, so that no volume or amount turns negative.
    private const double MostChange = 0.6;

    private double[]?[] slopes = [];

    /// <summary>True once slopes are known.</summary>
    public bool Known => slopes.Length > 0;

    /// <summary>Learns how the state moves in each direction.</summary>
    /// <param name="centre">A settled place.</param>
    /// <param name="beside">A settled neighbour in each direction; null where there is none.</param>
    public void Learn(Trial centre, Trial?[] beside)
    {
        ReadOnlySpan<double> here = centre.State!.State;
        slopes = new double[beside.Length][];
        for (int i = 0; i < beside.Length; i++)
        {
            if (beside[i] is { } neighbour)
            {
                double away = neighbour.Place[i] - centre.Place[i];
                double[] slope = new double[S.OxygenFromLungs];
                for (int k = 0; k < slope.Length; k++)
                {
                    slope[k] = (neighbour.State!.State[k] - here[k]) / away;
                }

                slopes[i] = slope;
            }
        }
    }

    /// <summary>The guess for a place.</summary>
    /// <param name="known">A settled place near it.</param>
    /// <param name="place">The place.</param>
    /// <param name="patient">The patient there.</param>
    /// <returns>State to start from.</returns>
    public double[] At(Trial known, ReadOnlySpan<double> place, CirculationParameters patient)
    {
        ReadOnlySpan<double> here = known.State!.State;
        double[] guess = new double[S.Count];
        for (int k = 0; k < S.OxygenFromLungs; k++)
        {
            double change = 0;
            for (int i = 0; i < slopes.Length; i++)
            {
                change += slopes[i] is { } slope ? slope[k] * (place[i] - known.Place[i]) : 0;
            }

            bool amount = k < S.VolumeCount || k >= S.Oxygen;
            double room = MostChange * Math.Abs(here[k]);
            guess[k] = here[k] + (amount ? Math.Clamp(change, -room, room) : change);
        }

        FillUp(guess, patient);
        return guess;
    }

    /// <summary>Gives the systemic veins what is missing to the patient's blood, by their compliance.</summary>
    private static void FillUp(double[] state, CirculationParameters patient)
    {
        double held = 0;
        for (int i = 0; i < S.VolumeCount; i++)
        {
            held += state[i];
        }

        double missing = patient[BloodVolumeMl] - held;
        ReadOnlySpan<int> veins = [S.UpperVein, S.SplanchnicVein, S.LowerVein];
        ReadOnlySpan<CirculationParameter> compliances = [UpperVenousComplianceMlPerMmHg, SplanchnicComplianceMlPerMmHg, LowerVenousComplianceMlPerMmHg];
        double all = 0;
        foreach (CirculationParameter compliance in compliances)
        {
            all += patient[compliance];
        }

        for (int i = 0; i < veins.Length; i++)
        {
            double before = state[veins[i]];
            state[veins[i]] += missing * patient[compliances[i]] / all;
            double ratio = state[veins[i]] / before;
            int node = Equations.GasNode.UpperVein + i;
            state[S.Oxygen + node] *= ratio;
        }
    }
}
