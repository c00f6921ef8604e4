using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Cavaxis.Devices.Cannulae;

namespace Cavaxis.Planning.Fit;

/// <summary>Whether all cannulae of a plan fit the same anatomy together, with drainage and return holes far enough apart.</summary>
internal static class JointFit
{
    /// <summary>Marks the anatomies in which every cannula has a suitable depth and the ports can be kept apart.</summary>
    /// <param name="drainage">Windows of the draining (or dual-lumen) cannula.</param>
    /// <param name="venousReturn">Windows of the cannula that returns to a vein, or null.</param>
    /// <param name="landmarks">Landmarks of the anatomies.</param>
    /// <param name="separationMm">Least distance between drainage and return holes.</param>
    /// <param name="marks">One bit for each anatomy; overwritten.</param>
    /// <returns>Number of anatomies marked.</returns>
    public static int Mark(
        DepthWindows drainage, DepthWindows? venousReturn, AxisLandmarks landmarks, double separationMm, Span<ulong> marks)
    {
        drainage.Suits.CopyTo(marks);
        if (venousReturn is not null)
        {
            for (int word = 0; word < marks.Length; word++)
            {
                marks[word] &= venousReturn.Suits[word];
            }

            Separate(drainage, venousReturn, landmarks, separationMm, marks);
        }

        return AnatomyBits.Count(marks);
    }

    /// <summary>Marks the anatomies in which the cannulae fit when each is advanced to its planned depth without looking.</summary>
    /// <param name="drainage">Windows of the draining (or dual-lumen) cannula.</param>
    /// <param name="drainageDepthMm">Its planned depth.</param>
    /// <param name="venousReturn">Windows of the cannula that returns to a vein, or null.</param>
    /// <param name="returnDepthMm">Its planned depth.</param>
    /// <param name="landmarks">Landmarks of the anatomies.</param>
    /// <param name="separationMm">Least distance between drainage and return holes.</param>
    /// <param name="enters">Whether a turned side jet still enters the valve in an anatomy, by its number; null where nothing is turned.</param>
    /// <returns>Number of such anatomies.</returns>
    public static int CountBlind(
        DepthWindows drainage,
        double drainageDepthMm,
        DepthWindows? venousReturn,
        double returnDepthMm,
        AxisLandmarks landmarks,
        double separationMm,
        Predicate<int>? enters = null)
    {
        ReadOnlySpan<double> drainageSkin = landmarks.Skin(drainage.Entry);
        ReadOnlySpan<double> returnSkin = venousReturn is null ? default : landmarks.Skin(venousReturn.Entry);
        double returnPort = venousReturn is null ? 0 : ReturnPortFromTip(venousReturn.Cannula);
        int count = 0;
        for (int i = 0; i < drainage.Low.Length; i++)
        {
            bool fits = drainageDepthMm >= drainage.Low[i] && drainageDepthMm <= drainage.High[i] && enters?.Invoke(i) != false;
            if (fits && venousReturn is not null)
            {
                double drainageMm = drainageSkin[i] + (drainage.Entry.Direction * drainageDepthMm);
                double returnMm = returnSkin[i] + (venousReturn.Entry.Direction * (returnDepthMm - returnPort));
                fits = returnDepthMm >= venousReturn.Low[i]
                    && returnDepthMm <= venousReturn.High[i]
                    && drainageMm - returnMm >= separationMm;
            }

            count += fits ? 1 : 0;
        }

        return count;
    }

    /// <summary>
    /// Unmarks where the ports cannot be kept apart. The drainage tip is taken as low and the return port as high as their
    /// windows allow: the widest they can be apart. Runs for each pair of venous cannulae, so four anatomies at a time.
    /// </summary>
    private static void Separate(
        DepthWindows drainage, DepthWindows venousReturn, AxisLandmarks landmarks, double separationMm, Span<ulong> marks)
    {
        (double down, double up) = (drainage.Entry.Direction, venousReturn.Entry.Direction);
        ReadOnlySpan<double> drainageSkin = landmarks.Skin(drainage.Entry);
        ReadOnlySpan<double> drainageDepth = down > 0 ? drainage.High : drainage.Low;
        ReadOnlySpan<double> returnSkin = landmarks.Skin(venousReturn.Entry);
        ReadOnlySpan<double> returnDepth = up > 0 ? venousReturn.Low : venousReturn.High;
        double port = up * ReturnPortFromTip(venousReturn.Cannula);
        int vectors = drainageSkin.Length / Vector256<double>.Count;
        ReadOnlySpan<Vector256<double>> drainageSkins = MemoryMarshal.Cast<double, Vector256<double>>(drainageSkin);
        ReadOnlySpan<Vector256<double>> drainageDepths = MemoryMarshal.Cast<double, Vector256<double>>(drainageDepth);
        ReadOnlySpan<Vector256<double>> returnSkins = MemoryMarshal.Cast<double, Vector256<double>>(returnSkin);
        ReadOnlySpan<Vector256<double>> returnDepths = MemoryMarshal.Cast<double, Vector256<double>>(returnDepth);
        Vector256<double> least = Vector256.Create(separationMm);
        Vector256<double> ports = Vector256.Create(port);
        for (int v = 0; v < vectors; v++)
        {
            Vector256<double> lowest = drainageSkins[v] + (drainageDepths[v] * down);
            Vector256<double> highest = returnSkins[v] + (returnDepths[v] * up) - ports;
            ulong close = Vector256.LessThan(lowest - highest, least).ExtractMostSignificantBits();
            int first = v * Vector256<double>.Count;
            marks[first >> 6] &= ~(close << (first & 63));
        }

        for (int i = vectors * Vector256<double>.Count; i < drainageSkin.Length; i++)
        {
            double lowest = drainageSkin[i] + (down * drainageDepth[i]);
            double highest = returnSkin[i] + (up * returnDepth[i]) - port;
            if (lowest - highest < separationMm)
            {
                marks[i >> 6] &= ~(1UL << (i & 63));
            }
        }
    }

    /// <summary>Distance of the return holes from the tip, mm.</summary>
    internal static double ReturnPortFromTip(Cannula cannula)
    {
        Lumen? lumen = cannula.LumenFor(LumenPurpose.Return) ?? cannula.Lumens[0];
        return lumen.HoleGroups.Count == 0 ? 0 : lumen.HoleGroups[^1].FromTipMm;
    }
}
