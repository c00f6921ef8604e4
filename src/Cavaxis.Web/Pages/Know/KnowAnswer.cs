using System.Globalization;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using Cavaxis.Web.Desk;
using Cavaxis.Web.Entry;
using Cavaxis.Web.Frame;

namespace Cavaxis.Web.Pages.Know;

/// <summary>The answer to "What do we know?": how much stands on assumption, and which measurement would help most.</summary>
/// <param name="Title">What the number is.</param>
/// <param name="Value">The number.</param>
/// <param name="Unit">What it counts.</param>
/// <param name="Origin">Where it comes from.</param>
/// <param name="HowSure">How sure it is.</param>
/// <param name="WouldChange">What would change it.</param>
/// <param name="Next">Fields to fill next.</param>
internal sealed record KnowAnswer(string Title, string Value, string Unit, Origin? Origin, string HowSure, string WouldChange, IReadOnlyList<LookNext> Next)
{
    private const int MostNext = 4;

    /// <summary>The answer for the open patient.</summary>
    public static KnowAnswer Of(PatientDesk desk, string id)
    {
        if (desk.Case is null)
        {
            IReadOnlyList<InputFault> faults = desk.Check.Faults;
            int needed = faults.Count(static f => f.Code == FaultCode.MissingField);
            return new KnowAnswer(
                "Entries that are needed or to be mended before a plan can be made",
                Number(faults.Count),
                faults.Count == 1 ? "entry" : "entries",
                Quantities.Origin.Calculated,
                $"{Number(needed)} needed, {Number(faults.Count - needed)} to be mended. Nothing else must be known: the rest may stay open or not known.",
                "Age, sex, height and weight make the first plan.",
                [.. faults.Select(f => ToField(f.Field, f.Code == FaultCode.MissingField ? "needed" : "to be mended", id)).OfType<LookNext>().DistinctBy(static n => n.Address).Take(MostNext)]);
        }

        if (desk.Plan is not PlanningResult plan)
        {
            return new KnowAnswer("Inputs that planning had to assume", "…", string.Empty, null, "The first plan is being computed.", string.Empty, []);
        }

        return new KnowAnswer(
            "Inputs that planning had to assume",
            Number(plan.Missing.Count),
            plan.Missing.Count == 1 ? "input" : "inputs",
            Quantities.Origin.Calculated,
            plan.Missing.Count == 0 ? "Every input that planning asks for is given." : $"Taken instead, with a wide spread: {string.Join("; ", plan.Missing.Take(2).Select(static m => $"{Words(m.Field)} {m.UsedInstead}"))}{(plan.Missing.Count > 2 ? "; …" : ".")}",
            plan.NextMeasurements is [MeasurementValue best, ..]
                ? string.Create(CultureInfo.InvariantCulture, $"Measuring {PlainWords.FromName(best.Dimension.ToString())} ({best.How}) removes {best.FitNarrowing * 100:F0} % of the doubt whether the plan fits, {best.DepthNarrowing * 100:F0} % of that about the depth (calculated).")
                : "No single measurement of the axis would make this plan much surer.",
            [
                .. plan.NextMeasurements.Take(2).Select(m => ToField(EntryForm.PathOf(m.Dimension), "surer plan", id)).OfType<LookNext>(),
                .. plan.Missing.Select(m => ToField(m.Field, $"decides {m.Matters}", id)).OfType<LookNext>().Take(MostNext - 2),
            ]);
    }

    private static LookNext? ToField(string path, string why, string id)
    {
        if (EntryForm.FieldOf(path) is not EntryField field)
        {
            return path.StartsWith("vessels[", StringComparison.Ordinal) || path.StartsWith("axis[", StringComparison.Ordinal)
                ? new LookNext($"{path}: {why}", $"patient/{id}/know?group={path[..path.IndexOf('[', StringComparison.Ordinal)]}")
                : new LookNext($"{path}: {why}", $"patient/{id}/know?group=file");
        }

        EntryGroup group = EntryForm.GroupOf(path)!;
        EntryRow? row = group.Rows.FirstOrDefault(r => r.Fields.Contains(field) && r.Name.Length > 0);
        string name = field.Path != path ? group.Title : row is null ? field.Label : field.Label == "Value" ? row.Name : $"{row.Name}: {field.Label.ToLowerInvariant()}";
        return new LookNext($"{name} ({why})", $"patient/{id}/know?field={Uri.EscapeDataString(path)}");
    }

    private static string Words(string path) => EntryForm.FieldOf(path) is EntryField field && field.Path == path ? field.Label.ToLowerInvariant() : path;

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
