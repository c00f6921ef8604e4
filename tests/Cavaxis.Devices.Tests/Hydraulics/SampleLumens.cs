using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Hydraulics;
using CsCheck;

namespace Cavaxis.Devices.Tests.Hydraulics;

/// <summary>Random but possible lumens, with a flow of 0.05 to 4 m/s in the bore.</summary>
internal static class SampleLumens
{
    internal sealed record Case(Lumen Lumen, double Flow, Fluid Fluid);

    internal static readonly Gen<Fluid> Liquids = Gen.Select(
        Gen.Double[950, 1100], Gen.Double[Math.Log(6e-4), Math.Log(1.2e-2)], (rho, mu) => new Fluid(rho, Math.Exp(mu)));

    internal static Gen<Case> Of(LumenPurpose purpose) =>
        from bore in Gen.Double[1.2, 9.5]
        from segments in Gen.Select(Gen.Double[20, 300], Gen.Double[0.85, 1.2], (l, s) => TubeSegment.Round(l, s * bore)).Array[1, 3]
        from end in Gen.Bool
        from sides in Gen.Select(
            Gen.Double[0, 0.9], Gen.Double[0, 25], Gen.Int[1, 10], Gen.Double[0.15, 0.45],
            (x, span, n, d) => (x, span, n, d)).Array[1, 4]
        from velocity in Gen.Double[Math.Log(0.05), Math.Log(4)]
        from fluid in Liquids
        let length = segments.Sum(s => s.LengthMm)
        let groups = sides
            .Select(s => new HoleGroup("side", Math.Max(s.span / 2, s.x * length), s.span, s.n, s.d * bore, HoleFacing.AllRound))
            .OrderByDescending(g => g.FromTipMm)
            .Concat(end ? [new HoleGroup("end", 0, 0, 1, 0.8 * bore, HoleFacing.End)] : Array.Empty<HoleGroup>())
            .ToArray()
        select new Case(new Lumen(purpose, segments, groups), Math.Min(2.3e-4, Math.Exp(velocity) * Math.PI * bore * bore / 4e6), fluid);

    internal static Lumen Scaled(Lumen lumen, double bore = 1, double holes = 1, double viscousLength = 1) => lumen with
    {
        Segments = [.. lumen.Segments.Select(s => new TubeSegment(
            s.LengthMm * viscousLength, s.InnerDiameterMm * bore, s.AreaMm2 * bore * bore))],
        HoleGroups = [.. lumen.HoleGroups.Select(g => g with { DiameterMm = g.DiameterMm * holes })],
    };
}
