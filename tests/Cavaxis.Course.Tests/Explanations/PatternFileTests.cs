using System.Globalization;
using System.Text;
using System.Text.Json;
using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Explanations.Reasoning;
using Cavaxis.Course.Explanations.Simulation;
using Cavaxis.Course.Explanations.Trends;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Tests.Explanations;

public class PatternFileTests
{
    private static readonly bool WritesTable = Environment.GetEnvironmentVariable("CAVAXIS_WRITE_DOCS") == "1";

    [Fact]
    public void The_table_of_patterns_is_what_the_circulation_model_computes()
    {
        ExplanationKnowledge knowledge = ExplanationKnowledge.BuiltIn;

        // The whole library takes minutes: it runs whenever the table is written. Every run computes one of its patients anew.
        if (WritesTable)
        {
            Write(PatternBuilder.Build(knowledge.Signs, LibraryPatients.All));
            return;
        }

        PatternPatient computed = Assert.Single(PatternBuilder.Build(knowledge.Signs, [.. LibraryPatients.All.Where(static p => p.Name == "vv adult 2")]));
        Same(computed, knowledge.Patients.Single(kept => kept.Name == computed.Name), knowledge);

        // Patterns of one patient can stand in for the library: those of a fitted one are made in the same way.
        ExplanationReport report = Explainer.Explain(knowledge.WithPatients([computed]), new TrendWindow(SupportKind.VenoVenous, [], []));
        Assert.Equal(1, report.Explanations.Sum(static e => e.Probability), 9);
        Assert.Throws<InputFaultException>(() => Explainer.Explain(knowledge.WithPatients([computed]), new TrendWindow(SupportKind.VenoArterial, [], [])));
    }

    [Fact]
    public void The_table_holds_every_patient_of_the_library_and_nearly_every_size_of_every_cause()
    {
        ExplanationKnowledge knowledge = ExplanationKnowledge.BuiltIn;
        Assert.Equal(LibraryPatients.All.Select(static p => p.Name), knowledge.Patients.Select(static p => p.Name));
        int wanted = knowledge.Patients.Sum(static p => 3 * CauseForms.All.Count(f => ExplanationKnowledge.CanBe(f.Cause, p.Support)));
        int found = knowledge.Patients.Sum(static p => p.Patterns.Length);
        Assert.InRange(found, (int)(0.97 * wanted), wanted);
    }

    // The last bits of a settled circulation depend on the vector width of the processor; a change of 2 % of a drift moves no odds.
    private static void Same(PatternPatient computed, PatternPatient kept, ExplanationKnowledge knowledge)
    {
        Assert.Equal(kept.Patterns.Length, computed.Patterns.Length);
        for (int i = 0; i < kept.Patterns.Length; i++)
        {
            for (int s = 0; s < knowledge.Signs.Length; s++)
            {
                double difference = Math.Abs(kept.Patterns[i].Changes[s] - computed.Patterns[i].Changes[s]);
                Assert.True(difference <= 0.002 + (0.02 * knowledge.Signs[s].Drift), $"{kept.Name} {kept.Patterns[i].Cause} {knowledge.Signs[s].Quantity}");
            }
        }
    }

    private static void Write(IReadOnlyList<PatternPatient> patients)
    {
        static string Name<T>(T value) => JsonNamingPolicy.CamelCase.ConvertName(value!.ToString()!);
        static string Numbers(IEnumerable<double> values) => string.Join(",", values.Select(static v => double.IsFinite(v) ? v.ToString("0.###", CultureInfo.InvariantCulture) : "\"NaN\""));
        StringBuilder text = new();
        text.Append("{\n  \"version\": \"1\",\n  \"date\": \"2026-11-28\",\n  \"note\": \"Computed by PatternFileTests with CAVAXIS_WRITE_DOCS=1 from the presets of the circulation; changes on the working scales of the signs, in their order.\",\n");
        text.Append(CultureInfo.InvariantCulture, $"  \"signs\": [{string.Join(",", ExplanationKnowledge.BuiltIn.Signs.Select(static s => $"\"{Name(s.Quantity)}\""))}],\n  \"patients\": [\n");
        text.AppendJoin(",\n", patients.Select(p => FormattableString.Invariant(
            $"    {{\"name\":\"{p.Name}\",\"support\":\"{Name(p.Support)}\",\"levels\":[{Numbers(p.Levels)}],\n     \"patterns\":[\n")
            + string.Join(",\n", p.Patterns.Select(r => FormattableString.Invariant($"      {{\"cause\":\"{Name(r.Cause)}\",\"variant\":\"{r.Variant}\",\"severity\":{r.Severity},\"changes\":[{Numbers(r.Changes)}]}}")))
            + "],\n     \"responses\":[\n"
            + string.Join(",\n", p.Responses.Select(r => $"      {{\"setting\":\"{Name(r.Setting)}\",\"perUnit\":[{Numbers(r.PerUnit)}]}}")) + "]}"));
        text.Append("\n  ]\n}\n");
        File.WriteAllText(Path.Combine(ExplanationFolders.Root, "catalogue", "explanation-patterns.json"), text.ToString());
    }
}
