using Cavaxis.Anatomy.Sampling;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Wires;

namespace Cavaxis.Planning.Insertion;

/// <summary>
/// What nobody has published for these devices in veins, drawn anew for each anatomy, evenly on the logarithm over its stated range. The same
/// sample and seed draw the same places in the ranges, so that two wires are compared in the same patients with the same luck.
/// </summary>
/// <param name="WireNMm2">Bending stiffness of the wire's body.</param>
/// <param name="WireTipNMm2">Bending stiffness of its soft tip.</param>
/// <param name="CannulaNMm2">Bending stiffness of the cannula.</param>
/// <param name="IntroducerNMm2">Bending stiffness of the introducer.</param>
/// <param name="WireFriction">Coulomb's coefficient of the wire on the vein.</param>
/// <param name="CannulaFriction">Coulomb's coefficient of the cannula on the vein.</param>
internal readonly record struct InsertionUnknowns(
    double WireNMm2, double WireTipNMm2, double CannulaNMm2, double IntroducerNMm2, double WireFriction, double CannulaFriction)
{
    /// <summary>First group of random numbers that anatomy leaves free.</summary>
    private const uint FirstGroup = 128;

    private const double UnitsPerWord = 1.0 / 4294967296.0;

    /// <summary>Soft tip, N mm² (from memory, weak).</summary>
    public static StiffnessRange WireTip { get; } = new(1, 10);

    /// <summary>Introducer, N mm²: about as stiff as its cannula (assumption).</summary>
    public static StiffnessRange Introducer { get; } = new(400, 2500);

    /// <summary>Cannula without a range of its own, N mm²: the wall as plain polymer (assumption).</summary>
    public static StiffnessRange AnyCannula { get; } = new(950, 4700);

    /// <summary>Friction on a vein: glass on living endothelium 0.03 to 0.06 (Dunn 2008), coatings of wires down to a sixth of bare steel (Schroeder 1993);
    /// nobody has measured a wire on a vein.</summary>
    public static (double Low, double High) Friction => (0.02, 0.3);

    /// <summary>Draws.</summary>
    /// <param name="wire">Class of wire.</param>
    /// <param name="cannula">The cannula's range.</param>
    /// <param name="sample">Number of the anatomy.</param>
    /// <param name="seed">Seed.</param>
    public static InsertionUnknowns Draw(WireClass wire, StiffnessRange cannula, uint sample, ulong seed)
    {
        WireStiffness range = WireStiffness.Of(wire);
        (uint a, uint b, uint c, uint d) = Philox.Bits(sample, 0, FirstGroup, 0, seed);
        (uint e, uint f, _, _) = Philox.Bits(sample, 0, FirstGroup + 1, 0, seed);
        return new InsertionUnknowns(
            Between(range.LowNMm2, range.HighNMm2, a),
            Between(WireTip.LowNMm2, WireTip.HighNMm2, b),
            Between(cannula.LowNMm2, cannula.HighNMm2, c),
            Between(Introducer.LowNMm2, Introducer.HighNMm2, d),
            Between(Friction.Low, Friction.High, e),
            Between(Friction.Low, Friction.High, f));
    }

    /// <summary>The middle of every range.</summary>
    /// <param name="wire">Class of wire.</param>
    /// <param name="cannula">The cannula's range.</param>
    public static InsertionUnknowns Middle(WireClass wire, StiffnessRange cannula)
    {
        const uint Half = 1u << 31;
        WireStiffness range = WireStiffness.Of(wire);
        return new InsertionUnknowns(
            Between(range.LowNMm2, range.HighNMm2, Half),
            Between(WireTip.LowNMm2, WireTip.HighNMm2, Half),
            Between(cannula.LowNMm2, cannula.HighNMm2, Half),
            Between(Introducer.LowNMm2, Introducer.HighNMm2, Half),
            Between(Friction.Low, Friction.High, Half),
            Between(Friction.Low, Friction.High, Half));
    }

    private static double Between(double low, double high, uint word) => low * Math.Pow(high / low, (word + 0.5) * UnitsPerWord);
}
