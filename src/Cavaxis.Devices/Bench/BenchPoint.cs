namespace Cavaxis.Devices.Bench;

/// <summary>One point of a bench curve in SI units.</summary>
/// <param name="FlowM3PerS">Flow, positive.</param>
/// <param name="DropPa">Magnitude of the pressure drop, positive.</param>
/// <param name="Line">Line in the file, from 1; zero when the point did not come from a file.</param>
public readonly record struct BenchPoint(double FlowM3PerS, double DropPa, int Line = 0);
