using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Cavaxis.Arteries.Grid;
using V = System.Numerics.Vector<double>;

namespace Cavaxis.Arteries.Transport;

/// <summary>
/// The loops that carry a tracer with the flow. At each face the upstream value, corrected towards second order with the superbee limiter (Roe 1985): compressive, and
/// never outside the values of the cells around it.
/// </summary>
internal static class TracerKernels
{
    /// <summary>Amount that passes each face, per second.</summary>
    /// <param name="grid">Grid.</param>
    /// <param name="tracer">Concentrations, spare cells filled.</param>
    /// <param name="area">Area at the start of the step, m².</param>
    /// <param name="faceFlow">Flow through the faces, m³/s.</param>
    /// <param name="timeStep">Step, s.</param>
    /// <param name="passing">To be filled.</param>
    public static void Passing(CellGrid grid, double[] tracer, double[] area, double[] faceFlow, double timeStep, double[] passing)
    {
        ref double c = ref At(tracer), a = ref At(area), flow = ref At(faceFlow), perDx = ref At(grid.PerDx), to = ref At(passing);
        V half = new(0.5), step = new(timeStep);
        for (nuint j = CellGrid.First; j < (nuint)grid.End; j += (nuint)V.Count)
        {
            V q = Load(ref flow, j), left = Load(ref c, j - 1), right = Load(ref c, j);
            Vector<long> distally = Vector.GreaterThan(q, V.Zero);
            V here = Vector.ConditionalSelect(distally, left, right);
            V before = here - Vector.ConditionalSelect(distally, Load(ref c, j - 2), Load(ref c, j + 1));
            V after = Vector.ConditionalSelect(distally, right, left) - here;
            V per = Vector.ConditionalSelect(distally, Load(ref perDx, j - 1), Load(ref perDx, j));
            V share = Vector.Abs(q) * step * per / Vector.ConditionalSelect(distally, Load(ref a, j - 1), Load(ref a, j));
            (q * (here + (half * (V.One - share) * Superbee(before, after)))).StoreUnsafe(ref to, j);
        }
    }

    /// <summary>Concentrations after the step.</summary>
    /// <param name="grid">Grid.</param>
    /// <param name="tracer">Concentrations; changed.</param>
    /// <param name="area">Area at the start of the step, m².</param>
    /// <param name="faceFlow">Flow through the faces, m³/s.</param>
    /// <param name="passing">Amount that passes the faces.</param>
    /// <param name="timeStep">Step, s.</param>
    public static void Update(CellGrid grid, double[] tracer, double[] area, double[] faceFlow, double[] passing, double timeStep)
    {
        ref double c = ref At(tracer), a = ref At(area), flow = ref At(faceFlow), perDx = ref At(grid.PerDx), by = ref At(passing);
        V step = new(timeStep);
        for (nuint i = CellGrid.First; i < (nuint)grid.End; i += (nuint)V.Count)
        {
            V over = step * Load(ref perDx, i), start = Load(ref a, i);
            V end = start - (over * (Load(ref flow, i + 1) - Load(ref flow, i)));
            (((start * Load(ref c, i)) - (over * (Load(ref by, i + 1) - Load(ref by, i)))) / end).StoreUnsafe(ref c, i);
        }
    }

    /// <summary>Areas after the step, for transport without the flow's own solver.</summary>
    /// <param name="grid">Grid.</param>
    /// <param name="area">Areas, m²; changed.</param>
    /// <param name="faceFlow">Flow through the faces, m³/s.</param>
    /// <param name="timeStep">Step, s.</param>
    public static void Areas(CellGrid grid, double[] area, double[] faceFlow, double timeStep)
    {
        ref double a = ref At(area), flow = ref At(faceFlow), perDx = ref At(grid.PerDx);
        V step = new(timeStep);
        for (nuint i = CellGrid.First; i < (nuint)grid.End; i += (nuint)V.Count)
        {
            (Load(ref a, i) - (step * Load(ref perDx, i) * (Load(ref flow, i + 1) - Load(ref flow, i)))).StoreUnsafe(ref a, i);
        }
    }

    /// <summary>The superbee-limited difference, for one face.</summary>
    /// <param name="before">Upstream difference.</param>
    /// <param name="after">Difference across the face.</param>
    /// <returns>Difference to correct with.</returns>
    public static double Superbee(double before, double after)
    {
        if (before * after <= 0)
        {
            return 0;
        }

        double b = Math.Abs(before), a = Math.Abs(after);
        return Math.CopySign(Math.Max(Math.Min(2 * b, a), Math.Min(b, 2 * a)), after);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static V Superbee(V before, V after)
    {
        V b = Vector.Abs(before), a = Vector.Abs(after);
        V size = Vector.Max(Vector.Min(b + b, a), Vector.Min(b, a + a));
        V signed = Vector.ConditionalSelect(Vector.GreaterThan(after, V.Zero), size, -size);
        return Vector.ConditionalSelect(Vector.GreaterThan(before * after, V.Zero), signed, V.Zero);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static V Load(ref double from, nuint index) => Vector.LoadUnsafe(ref from, index);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static ref double At(double[] array) => ref MemoryMarshal.GetArrayDataReference(array);
}
