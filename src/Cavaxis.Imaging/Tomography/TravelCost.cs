using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tomography;

/// <summary>What a millimetre of way costs at each cube of an even grid along the patient's axes.</summary>
public sealed class TravelCost
{
    private readonly float[] perMm;

    /// <summary>A field of costs.</summary>
    /// <param name="origin">Middle of the first cube, mm.</param>
    /// <param name="stepMm">Edge of a cube, mm.</param>
    /// <param name="countX">Cubes along x, 3 or more.</param>
    /// <param name="countY">Cubes along y, 3 or more.</param>
    /// <param name="countZ">Cubes along z, 3 or more.</param>
    /// <param name="perMm">Cost of a millimetre, above zero, x fastest, then y, then z; the caller must not change them afterwards.</param>
    /// <exception cref="InputFaultException">A size is out of bounds or the number of costs is another.</exception>
    public TravelCost(Vector3D origin, double stepMm, int countX, int countY, int countZ, float[] perMm)
    {
        ArgumentNullException.ThrowIfNull(perMm);
        const string Remedy = "Give a grid of cubes with one cost each.";
        Origin = origin;
        StepMm = Require.InRange(stepMm, 0.01, 100, "cost.stepMm", Remedy);
        CountX = (int)Require.InRange(countX, 3, 4096, "cost.countX", Remedy);
        CountY = (int)Require.InRange(countY, 3, 4096, "cost.countY", Remedy);
        CountZ = (int)Require.InRange(countZ, 3, 4096, "cost.countZ", Remedy);
        if (perMm.Length != (long)countX * countY * countZ)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.WrongLength, "cost.perMm", perMm.Length.ToString(CultureInfo.InvariantCulture), string.Create(CultureInfo.InvariantCulture, $"{(long)countX * countY * countZ} costs"), Remedy));
        }

        this.perMm = perMm;
    }

    /// <summary>Middle of the first cube, mm.</summary>
    public Vector3D Origin { get; }

    /// <summary>Edge of a cube, mm.</summary>
    public double StepMm { get; }

    /// <summary>Cubes along x.</summary>
    public int CountX { get; }

    /// <summary>Cubes along y.</summary>
    public int CountY { get; }

    /// <summary>Cubes along z.</summary>
    public int CountZ { get; }

    /// <summary>Cost of a millimetre, x fastest, then y, then z.</summary>
    public ReadOnlySpan<float> PerMm => perMm;

    /// <summary>The cube in which a place lies, or the nearest one.</summary>
    /// <param name="place">mm.</param>
    /// <returns>Its number along each axis.</returns>
    public (int X, int Y, int Z) CubeOf(Vector3D place)
    {
        Vector3D from = (place - Origin) / StepMm;
        return (Held(from.X, CountX), Held(from.Y, CountY), Held(from.Z, CountZ));
    }

    private static int Held(double at, int count) => (int)Math.Clamp(Math.Round(at), 0, count - 1);
}
