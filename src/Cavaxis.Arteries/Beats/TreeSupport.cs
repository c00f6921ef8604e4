using System.Collections.Immutable;
using Cavaxis.Arteries.Support;

namespace Cavaxis.Arteries.Beats;

/// <summary>What the tree is supported by.</summary>
/// <param name="Placement">Where the arterial cannula lies; null without a pump.</param>
/// <param name="PumpMlPerS">Pump flow over the beat at equal steps, both cannulae together, mL/s.</param>
/// <param name="PerfusionLPerMin">Part of it that goes through the distal perfusion cannula, L/min.</param>
/// <param name="BalloonMl">Volume of a balloon pump, mL; zero for none.</param>
public sealed record TreeSupport(CannulaPlacement? Placement, ImmutableArray<double> PumpMlPerS, double PerfusionLPerMin, double BalloonMl);
