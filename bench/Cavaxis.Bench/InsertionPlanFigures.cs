using System.Diagnostics;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;

namespace Cavaxis.Bench;

/// <summary>Whole insertion studies of real plans: one cannula from the neck, and plans with cannulae from the groin.</summary>
internal static class InsertionPlanFigures
{
    /// <summary>Measures.</summary>
    /// <param name="anatomies">Anatomies of each study.</param>
    public static void Print(int anatomies)
    {
        FigureTable table = new(
            $"Insertion study, {anatomies} anatomies, two threads, no advice, {MachineLoad.Words()}", "case", "plan", "veins entered", "wall s", "processor s", "not followed", "deepest node mm");
        foreach ((string path, CaseFile caseFile) in DemoCases.All.Where(static c => c.Path.Contains("tall-man", StringComparison.Ordinal)))
        {
            PlanningResult planning = Planner.Plan(caseFile, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, new PlanningOptions());
            Row(table, path, caseFile, planning, planning.Plans.FirstOrDefault(static p => Veins(p, AccessRoute.Jugular) == 1 && Veins(p, AccessRoute.FemoralVein) == 0), anatomies);
            Row(table, path, caseFile, planning, planning.Plans.OrderByDescending(static p => Veins(p, AccessRoute.FemoralVein)).ThenBy(static p => p.Rank).FirstOrDefault(), anatomies);
        }

        table.Print();
    }

    private static int Veins(CannulationPlan plan, AccessRoute route) => plan.Cannulae.Count(c => c.Route == route);

    private static void Row(FigureTable table, string path, CaseFile caseFile, PlanningResult planning, CannulationPlan? plan, int anatomies)
    {
        if (plan is null)
        {
            return;
        }

        InsertionStudy.Of(caseFile, DeviceCatalogue.BuiltIn, planning, plan, new InsertionOptions { Anatomies = InsertionOptions.FewestAnatomies, Advice = false });
        TimeSpan busy = Environment.CpuUsage.TotalTime;
        long from = Stopwatch.GetTimestamp();
        InsertionResult result = InsertionStudy.Of(caseFile, DeviceCatalogue.BuiltIn, planning, plan, new InsertionOptions { Anatomies = anatomies, Advice = false });
        double wall = Stopwatch.GetElapsedTime(from).TotalSeconds;
        double processor = (Environment.CpuUsage.TotalTime - busy).TotalSeconds;
        table.Add(
            $"{Path.GetFileNameWithoutExtension(path)}", $"{plan.Name}", $"{string.Join(" + ", result.Cannulae.Select(static c => $"{c.Route} {c.Side}"))}", $"{wall:F0}", $"{processor:F0}",
            $"{result.Cannulae.Sum(static c => c.NotFollowed.Values.Sum())}", $"{result.Cannulae.Max(static c => c.DeepestPenetrationMm):F3}");
    }
}
