using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Cavaxis.Bench;

// Figures of one run on one machine, to be compared with each other. Nothing here passes or fails.
bool quick = args.Contains("--quick");
bool all = !args.Contains("--circulation");
string? source = args.SkipWhile(static a => a != "--sundials").Skip(1).FirstOrDefault();
Clock whole = new(TimeSpan.FromSeconds(quick ? 2 : 10));
Clock part = new(TimeSpan.FromSeconds(quick ? 0.4 : 3));
Console.WriteLine(
    $"{RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} cores, vectors of {(Vector512.IsHardwareAccelerated ? 512 : Vector256.IsHardwareAccelerated ? 256 : 128)} bits");
if (args.Contains("--insertion-anatomies"))
{
    LumenFigures.Print();
    InsertionTrialFigures.Print(quick ? 40 : 1000);
    return;
}

if (args.Contains("--insertion-plans"))
{
    InsertionPlanFigures.Print(quick ? 20 : 200);
    return;
}

if (args.Contains("--insertion-sensitivity"))
{
    InsertionSensitivity.Print(quick ? 12 : 48, quick ? 6 : 24, args.Contains("--groin"));
    return;
}

if (args.Contains("--echo"))
{
    EchoFigures.Print(part);
    return;
}

if (args.Contains("--tomography"))
{
    TomographyFigures.Print(whole);
    return;
}

if (args.Contains("--arteries"))
{
    ArteryFigures.Print(quick ? 3 : 9);
    return;
}

if (args.Contains("--insertion"))
{
    InsertionFigures.Print(quick ? 20 : 200);
    return;
}

if (args.Contains("--records"))
{
    await RecordFigures.PrintAsync(part, quick ? 50_000 : 1_000_000, args.SkipWhile(static a => a != "--store").Skip(1).FirstOrDefault());
    return;
}

if (args.Contains("--courses"))
{
    await CourseFigures.PrintAsync(part, quick ? 50_000 : 1_000_000, args.SkipWhile(static a => a != "--store").Skip(1).FirstOrDefault());
    return;
}

if (all)
{
    InsertionFigures.Print(quick ? 5 : 200);
    PlanFigures.Cases(whole);
    PlanFigures.Growth(whole);
    KernelFigures.Print(part);
    ReportFigures.Print(part);
    EchoFigures.Print(part);
    StartFigures.Print(quick ? 2 : 6, everyVariant: !quick);
}

CirculationFigures.Print(part, quick ? 10 : 120);
CvodeFigures.Print(source, quick ? 1 : 3, quick ? ["adams"] : ["adams", "bdf"], quick ? [1e-5] : [1e-5, 1e-6], quick ? 2 : 4, quick ? 3 : 7);
CohortFigures.Print(quick ? 64 : 1000, quick ? 16 : 64, quick ? 1 : 3);
