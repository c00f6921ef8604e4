using Cavaxis.Circulation.Parameters;
using Cavaxis.Quantities;

namespace Cavaxis.Circulation.Calibration;

/// <summary>How far a parameter may lie from its value before any reading, and on which scale it is searched.</summary>
/// <param name="Parameter">The parameter.</param>
/// <param name="Scale">Scale on which the belief is normal.</param>
/// <param name="Sd">Standard deviation on that scale.</param>
/// <param name="Followers">Parameters that are moved by the same factor, because no reading tells them apart.</param>
/// <param name="Words">What it is, in plain words.</param>
/// <param name="Source">Why it is that wide.</param>
public sealed record PriorSpread(
    CirculationParameter Parameter,
    ScaleKind Scale,
    double Sd,
    IReadOnlyList<CirculationParameter> Followers,
    string Words,
    Source Source);
