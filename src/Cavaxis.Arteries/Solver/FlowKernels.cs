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
    /// <summary>
    /// Difference of pressure from cell to cell, Pa, below which a wave counts as smooth and keeps its crest: pulses in arteries rise by less than this in a cell; a
    /// jump of kilopascals is limited. Of flow, what a wave of that pressure carries.
    /// </summary>
    private const double SmallJump = 100;

    /// <summary>At a face the lumen is at least this part of that in the cell: keeps steep states positive, and touches no other.</summary>
    private const double LeastPart = 0.1;

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
        ref double wallRise = ref At(s.WallRise), slowness = ref At(s.Slowness);
        ref double pressure = ref At(s.Pressure), flow = ref At(s.Flow), stiffness = ref At(g.Stiffness), offset = ref At(g.Offset), perDx = ref At(g.PerDx);
        V half = new(0.5), perDensity = new(1 / density), waves = V.Zero, blood = V.Zero;
        Vector<long> below = Vector<long>.AllBitsSet;
        for (nuint i = CellGrid.First; i < (nuint)g.End; i += (nuint)V.Count)
        {
            V a = Load(ref area, i), u = Load(ref velocity, i), k = Load(ref stiffness, i), per = Load(ref perDx, i);
            V w = Vector.SquareRoot(a + Load(ref body, i));
            V rise = half * k / w;
            V square = a * rise * perDensity;
            V c = Vector.SquareRoot(square);
            V speed = Vector.Abs(u);
            w.StoreUnsafe(ref root, i);
            rise.StoreUnsafe(ref wallRise, i);
            (c / square).StoreUnsafe(ref slowness, i);
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
        ref double wallRise = ref At(s.WallRise), slowness = ref At(s.Slowness), softness = ref At(g.Softness), rootSlope = ref At(g.RootSlope), rootReference = ref At(g.RootReference), stiffnessSlope = ref At(g.StiffnessSlope), perDx = ref At(g.PerDx);
        ref double faceSoftness = ref At(g.FaceSoftness), faceOffset = ref At(g.FaceOffset);
        V least = new(LeastPart), smallSquare = new(SmallJump * SmallJump), small = new(SmallJump / density);
        V half = new(0.5), two = new(2.0), perDensity = new(1 / density), halfStep = new(0.5 * timeStep);
        ref double am = ref At(s.AreaMinus), qm = ref At(s.FlowMinus), hm = ref At(s.HeadMinus), ym = ref At(s.AdmittanceMinus);
        ref double ap = ref At(s.AreaPlus), qp = ref At(s.FlowPlus), hp = ref At(s.HeadPlus), yp = ref At(s.AdmittancePlus);
        for (nuint i = CellGrid.First; i < (nuint)g.End; i += (nuint)V.Count)
        {
            V p = Load(ref pressure, i), q = Load(ref flow, i), a = Load(ref area, i), u = Load(ref velocity, i), r = Load(ref root, i), per = Load(ref perDx, i);
            V slow = Load(ref slowness, i), smallFlow = small * a * slow;
            V dp = Limited(p - Load(ref pressure, i - 1), Load(ref pressure, i + 1) - p, smallSquare);
            V dq = Limited(q - Load(ref flow, i - 1), Load(ref flow, i + 1) - q, smallFlow * smallFlow);
            V px = dp * per, qx = dq * per;
            V shape = two * r * (Load(ref rootSlope, i) - ((r - Load(ref rootReference, i)) * Load(ref stiffnessSlope, i)));
            V square = u * u;
            V pt = Load(ref wallRise, i) * (Load(ref bodyRate, i) - qx);
            V qt = (square * shape) - (two * u * qx) - (((a * perDensity) - (two * square * r * Load(ref softness, i))) * px) - (Load(ref drag, i) * u);
            V pMiddle = p + (halfStep * pt), qMiddle = q + (halfStep * qt), pHalf = half * dp, qHalf = half * dq, b = Load(ref bodyHalf, i);
            V pFace = pMiddle - pHalf, qFace = qMiddle - qHalf;
            V rFace = Vector.Max((pFace - Load(ref faceOffset, i)) * Load(ref faceSoftness, i), least * r);
            V aFace = Vector.Max((rFace * rFace) - b, least * a), uFace = qFace / aFace;
            aFace.StoreUnsafe(ref am, i);
            qFace.StoreUnsafe(ref qm, i);
            ((half * uFace * uFace) + (pFace * perDensity)).StoreUnsafe(ref hm, i);
            (aFace * slow).StoreUnsafe(ref ym, i);
            pFace = pMiddle + pHalf;
            qFace = qMiddle + qHalf;
            rFace = Vector.Max((pFace - Load(ref faceOffset, i + 1)) * Load(ref faceSoftness, i + 1), least * r);
            aFace = Vector.Max((rFace * rFace) - b, least * a);
            uFace = qFace / aFace;
            aFace.StoreUnsafe(ref ap, i);
            qFace.StoreUnsafe(ref qp, i);
            ((half * uFace * uFace) + (pFace * perDensity)).StoreUnsafe(ref hp, i);
            (aFace * slow).StoreUnsafe(ref yp, i);
        }
    }

    /// <summary>
    /// Flow and head at every face: across each of the two waves that leave it, head and flow change together, dH = ∓(c/A) dQ, with the wave speed of the cell. Both are single-valued, also
    /// where shape or stiffness jump, and conserve mass and total pressure.
    /// </summary>
    /// <param name="g">Grid.</param>
    /// <param name="s">State.</param>
    public static void Faces(CellGrid g, FlowState s)
    {
        ref double qm = ref At(s.FlowMinus), hm = ref At(s.HeadMinus), ym = ref At(s.AdmittanceMinus), qp = ref At(s.FlowPlus), hp = ref At(s.HeadPlus), yp = ref At(s.AdmittancePlus);
        ref double faceFlow = ref At(s.FaceFlow), faceHead = ref At(s.FaceHead);
        for (nuint i = CellGrid.First; i < (nuint)g.End; i += (nuint)V.Count)
        {
            V yl = Load(ref yp, i - 1), yr = Load(ref ym, i), ql = Load(ref qp, i - 1), hl = Load(ref hp, i - 1);
            V rise = ((ql - Load(ref qm, i)) + (yr * (Load(ref hm, i) - hl))) / (yl + yr);
            (hl + rise).StoreUnsafe(ref faceHead, i);
            (ql - (yl * rise)).StoreUnsafe(ref faceFlow, i);
        }
    }

    /// <summary>Moves area and velocity on by one step; friction by the trapezium rule.</summary>
    /// <param name="g">Grid.</param>
    /// <param name="s">State.</param>
    /// <param name="timeStep">Step, s.</param>
    public static void Update(CellGrid g, FlowState s, double timeStep)
    {
        ref double area = ref At(s.Area), velocity = ref At(s.Velocity), drag = ref At(s.Drag), faceFlow = ref At(s.FaceFlow), faceHead = ref At(s.FaceHead), perDx = ref At(g.PerDx);
        V step = new(timeStep);
        for (nuint i = CellGrid.First; i < (nuint)g.End; i += (nuint)V.Count)
        {
            V a = Load(ref area, i), u = Load(ref velocity, i), over = step * Load(ref perDx, i);
            V next = a - (over * (Load(ref faceFlow, i + 1) - Load(ref faceFlow, i)));
            V loss = step * Load(ref drag, i), both = a + next;
            next.StoreUnsafe(ref area, i);
            (((u * (both - loss)) - (both * over * (Load(ref faceHead, i + 1) - Load(ref faceHead, i)))) / (both + loss)).StoreUnsafe(ref velocity, i);
        }
    }

    /// <summary>
    /// Slope after van Albada (1982): the mean of both differences where they are alike or small against the square given, towards none where they quarrel.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static V Limited(V left, V right, V smallSquare)
    {
        V l = (left * left) + smallSquare, r = (right * right) + smallSquare;
        return ((left * r) + (right * l)) / (l + r);
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
