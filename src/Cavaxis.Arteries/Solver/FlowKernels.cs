using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Cavaxis.Arteries.Grid;
using V = System.Numerics.Vector<double>;

namespace Cavaxis.Arteries.Solver;

/// <summary>
/// The loops over all cells of the tree. Equations: A_t + Q_x = 0, U_t + (U²/2 + P/ρ)_x = −κU/A. What is carried to the faces is pressure and flow, not area:
/// a state at rest has one pressure, so both sides of every face agree to the last bit whatever the vessel's shape and stiffness do there.
/// </summary>
internal static class FlowKernels
{
    /// <summary>Pressure and flow of every cell.</summary>
    /// <param name="g">Grid.</param>
    /// <param name="s">State.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="fastestWave">Largest (|U| + c)/dx, 1/s.</param>
    /// <param name="fastestBlood">Largest |U|/dx, 1/s.</param>
    /// <returns>True where every velocity is below the wave speed.</returns>
    public static bool Pressures(CellGrid g, FlowState s, double density, out double fastestWave, out double fastestBlood)
    {
        ref double area = ref At(s.Area), velocity = ref At(s.Velocity), body = ref At(s.Body), root = ref At(s.Root);
        ref double pressure = ref At(s.Pressure), flow = ref At(s.Flow), stiffness = ref At(g.Stiffness), offset = ref At(g.Offset), perDx = ref At(g.PerDx);
        V perTwoDensity = new(0.5 / density), waves = V.Zero, blood = V.Zero;
        Vector<long> below = Vector<long>.AllBitsSet;
        for (nuint i = CellGrid.First; i < (nuint)g.End; i += (nuint)V.Count)
        {
            V a = Load(ref area, i), u = Load(ref velocity, i), k = Load(ref stiffness, i), per = Load(ref perDx, i);
            V w = Vector.SquareRoot(a + Load(ref body, i));
            V c = Vector.SquareRoot(a * k * perTwoDensity / w);
            V speed = Vector.Abs(u);
            w.StoreUnsafe(ref root, i);
            ((k * w) + Load(ref offset, i)).StoreUnsafe(ref pressure, i);
            (a * u).StoreUnsafe(ref flow, i);
            below &= Vector.LessThan(speed, c);
            waves = Vector.Max(waves, (speed + c) * per);
            blood = Vector.Max(blood, speed * per);
        }

        fastestWave = Largest(waves);
        fastestBlood = Largest(blood);
        return Vector.EqualsAll(below, Vector<long>.AllBitsSet);
    }

    /// <summary>What each cell sends to its faces at the middle of the step.</summary>
    /// <param name="g">Grid.</param>
    /// <param name="s">State.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="timeStep">Step, s.</param>
    public static void Predict(CellGrid g, FlowState s, double density, double timeStep)
    {
        ref double area = ref At(s.Area), velocity = ref At(s.Velocity), root = ref At(s.Root), pressure = ref At(s.Pressure), flow = ref At(s.Flow);
        ref double bodyHalf = ref At(s.BodyHalf), bodyRate = ref At(s.BodyRate), drag = ref At(s.Drag);
        ref double stiffness = ref At(g.Stiffness), rootSlope = ref At(g.RootSlope), rootReference = ref At(g.RootReference), stiffnessSlope = ref At(g.StiffnessSlope), perDx = ref At(g.PerDx);
        ref double faceSoftness = ref At(g.FaceSoftness), faceOffset = ref At(g.FaceOffset), faceStiffness = ref At(g.FaceStiffness);
        V half = new(0.5), two = new(2.0), perDensity = new(1 / density), halfStep = new(0.5 * timeStep), perTwoDensity = new(0.5 / density);
        ref double am = ref At(s.AreaMinus), qm = ref At(s.FlowMinus), hm = ref At(s.HeadMinus), zm = ref At(s.ImpedanceMinus);
        ref double ap = ref At(s.AreaPlus), qp = ref At(s.FlowPlus), hp = ref At(s.HeadPlus), zp = ref At(s.ImpedancePlus);
        for (nuint i = CellGrid.First; i < (nuint)g.End; i += (nuint)V.Count)
        {
            V p = Load(ref pressure, i), q = Load(ref flow, i), a = Load(ref area, i), u = Load(ref velocity, i), r = Load(ref root, i), per = Load(ref perDx, i);
            V dp = Limited(p - Load(ref pressure, i - 1), Load(ref pressure, i + 1) - p);
            V dq = Limited(q - Load(ref flow, i - 1), Load(ref flow, i + 1) - q);
            V px = dp * per, qx = dq * per;
            V wallRise = Load(ref stiffness, i) * half / r;
            V shape = two * r * (Load(ref rootSlope, i) - ((r - Load(ref rootReference, i)) * Load(ref stiffnessSlope, i)));
            V square = u * u;
            V pt = wallRise * (Load(ref bodyRate, i) - qx);
            V qt = (square * shape) - (two * u * qx) - (((a * perDensity) - (square / wallRise)) * px) - (Load(ref drag, i) * u);
            V pMiddle = p + (halfStep * pt), qMiddle = q + (halfStep * qt), pHalf = half * dp, qHalf = half * dq, b = Load(ref bodyHalf, i);
            V pFace = pMiddle - pHalf, qFace = qMiddle - qHalf;
            V rFace = (pFace - Load(ref faceOffset, i)) * Load(ref faceSoftness, i);
            V aFace = (rFace * rFace) - b, uFace = qFace / aFace;
            aFace.StoreUnsafe(ref am, i);
            qFace.StoreUnsafe(ref qm, i);
            ((half * uFace * uFace) + (pFace * perDensity)).StoreUnsafe(ref hm, i);
            Vector.SquareRoot(Load(ref faceStiffness, i) * perTwoDensity / (rFace * aFace)).StoreUnsafe(ref zm, i);
            pFace = pMiddle + pHalf;
            qFace = qMiddle + qHalf;
            rFace = (pFace - Load(ref faceOffset, i + 1)) * Load(ref faceSoftness, i + 1);
            aFace = (rFace * rFace) - b;
            uFace = qFace / aFace;
            aFace.StoreUnsafe(ref ap, i);
            qFace.StoreUnsafe(ref qp, i);
            ((half * uFace * uFace) + (pFace * perDensity)).StoreUnsafe(ref hp, i);
            Vector.SquareRoot(Load(ref faceStiffness, i + 1) * perTwoDensity / (rFace * aFace)).StoreUnsafe(ref zp, i);
        }
    }

    /// <summary>
    /// Flow and head at every face: across each of the two waves that leave it, head and flow change together, dH = ∓(c/A) dQ. Both are single-valued, also
    /// where shape or stiffness jump, and conserve mass and total pressure.
    /// </summary>
    /// <param name="g">Grid.</param>
    /// <param name="s">State.</param>
    public static void Faces(CellGrid g, FlowState s)
    {
        ref double qm = ref At(s.FlowMinus), hm = ref At(s.HeadMinus), zm = ref At(s.ImpedanceMinus), qp = ref At(s.FlowPlus), hp = ref At(s.HeadPlus), zp = ref At(s.ImpedancePlus);
        ref double faceFlow = ref At(s.FaceFlow), faceHead = ref At(s.FaceHead);
        for (nuint i = CellGrid.First; i < (nuint)g.End; i += (nuint)V.Count)
        {
            V zl = Load(ref zp, i - 1), zr = Load(ref zm, i), ql = Load(ref qp, i - 1), hl = Load(ref hp, i - 1);
            V q = ((zl * ql) + (zr * Load(ref qm, i)) + (hl - Load(ref hm, i))) / (zl + zr);
            q.StoreUnsafe(ref faceFlow, i);
            (hl + (zl * (ql - q))).StoreUnsafe(ref faceHead, i);
        }
    }

    /// <summary>Moves area and velocity on by one step; friction by the trapezium rule.</summary>
    /// <param name="g">Grid.</param>
    /// <param name="s">State.</param>
    /// <param name="timeStep">Step, s.</param>
    public static void Update(CellGrid g, FlowState s, double timeStep)
    {
        ref double area = ref At(s.Area), velocity = ref At(s.Velocity), drag = ref At(s.Drag), faceFlow = ref At(s.FaceFlow), faceHead = ref At(s.FaceHead), perDx = ref At(g.PerDx);
        V step = new(timeStep), one = V.One;
        for (nuint i = CellGrid.First; i < (nuint)g.End; i += (nuint)V.Count)
        {
            V a = Load(ref area, i), u = Load(ref velocity, i), over = step * Load(ref perDx, i);
            V next = a - (over * (Load(ref faceFlow, i + 1) - Load(ref faceFlow, i)));
            V loss = step * Load(ref drag, i) / (a + next);
            next.StoreUnsafe(ref area, i);
            (((u * (one - loss)) - (over * (Load(ref faceHead, i + 1) - Load(ref faceHead, i)))) / (one + loss)).StoreUnsafe(ref velocity, i);
        }
    }

    /// <summary>Slope of the monotonised central kind (van Leer 1977).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static V Limited(V left, V right)
    {
        V middle = new V(0.5) * (left + right);
        V size = Vector.Min(Vector.Abs(middle), new V(2.0) * Vector.Min(Vector.Abs(left), Vector.Abs(right)));
        V signed = Vector.ConditionalSelect(Vector.GreaterThan(middle, V.Zero), size, -size);
        return Vector.ConditionalSelect(Vector.GreaterThan(left * right, V.Zero), signed, V.Zero);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static V Load(ref double from, nuint index) => Vector.LoadUnsafe(ref from, index);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static ref double At(double[] array) => ref MemoryMarshal.GetArrayDataReference(array);

    private static double Largest(V values)
    {
        double most = values[0];
        for (int i = 1; i < V.Count; i++)
        {
            most = Math.Max(most, values[i]);
        }

        return most;
    }
}
