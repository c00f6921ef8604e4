using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Cavaxis.Bench;

// Figures of one run on one machine, to be compared with each other. Nothing here passes or fails.
bool quick = args.Contains("--quick");
Clock whole = new(TimeSpan.FromSeconds(quick ? 2 : 10));
Clock part = new(TimeSpan.FromSeconds(quick ? 0.4 : 3));
Console.WriteLine(
    $"{RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} cores, vectors of {(Vector512.IsHardwareAccelerated ? 512 : Vector256.IsHardwareAccelerated ? 256 : 128)} bits");
PlanFigures.Cases(whole);
PlanFigures.Growth(whole);
KernelFigures.Print(part);
CirculationFigures.Print(part, quick ? 160 : 1000);
ReportFigures.Print(part);
StartFigures.Print(quick ? 2 : 6, everyVariant: !quick);
