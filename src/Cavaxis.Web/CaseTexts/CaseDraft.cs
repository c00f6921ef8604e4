using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Cavaxis.Planning.Json;

namespace Cavaxis.Web.CaseTexts;

/// <summary>
/// A case as text that is being filled in: fields can be read and set by their path whether or not their values are free of
/// faults. A draft does not change; setting a field gives another one.
/// </summary>
public sealed class CaseDraft
{
    /// <summary>The section that every case has: it stays when it is empty, so that faults name the fields that are needed.</summary>
    private const string Needed = "patient";

    private readonly JsonObject root;

    private CaseDraft(JsonObject root)
    {
        this.root = root;
        Json = root.ToJsonString(CavaxisJson.Options) + "\n";
    }

    /// <summary>A case of which nothing is known yet.</summary>
    public static CaseDraft Empty { get; } = new(new JsonObject { ["cavaxisCase"] = Planning.Case.CaseFile.CurrentVersion, [Needed] = new JsonObject() });

    /// <summary>The text.</summary>
    public string Json { get; }

    /// <summary>Reads a text that the shelf took.</summary>
    /// <param name="json">A JSON object.</param>
    /// <returns>The draft.</returns>
    /// <exception cref="JsonException">The text is no JSON object, or a name stands twice in it.</exception>
    public static CaseDraft Of(string json)
    {
        try
        {
            JsonObject root = JsonNode.Parse(json) as JsonObject ?? throw new JsonException("The case is no object.");
            return new CaseDraft(root);
        }
        catch (ArgumentException twice)
        {
            // The reader of nodes says it so when a name stands twice in an object.
            throw new JsonException(twice.Message, twice);
        }
    }

    /// <summary>The value at a path.</summary>
    /// <param name="path">A path as <see cref="With"/> takes it.</param>
    /// <returns>A copy of the value; null where there is none.</returns>
    public JsonNode? At(string path)
    {
        JsonNode? at = root;
        foreach (CaseStep step in CaseStep.Of(path))
        {
            at = (at as JsonObject)?[step.Name];
            if (step.Keys.Count > 0)
            {
                at = Entry(at as JsonArray, step);
            }
        }

        return at?.DeepClone();
    }

    /// <summary>The draft with another value at a path; sections and entries on the way are made where they are missing.</summary>
    /// <param name="path">A path such as <c>blood.arterialPh</c> or <c>axis[dimension=svcDiameter].value</c>.</param>
    /// <param name="value">The value; null takes the field out, and an entry of which only the keys are left with it.</param>
    /// <returns>Another draft.</returns>
    public CaseDraft With(string path, JsonNode? value)
    {
        JsonObject copy = (JsonObject)root.DeepClone();
        IReadOnlyList<CaseStep> steps = CaseStep.Of(path);
        Set(copy, steps, 0, value?.DeepClone());
        return new CaseDraft(copy);
    }

    /// <summary>The path as faults of the case reader name it, with the place of an entry in its list.</summary>
    /// <param name="path">A path as <see cref="With"/> takes it.</param>
    /// <returns>A path such as <c>vessels[0].depthMm</c>; null where the entry is not there.</returns>
    public string? FaultPath(string path)
    {
        List<string> names = [];
        JsonNode? at = root;
        foreach (CaseStep step in CaseStep.Of(path))
        {
            at = (at as JsonObject)?[step.Name];
            if (step.Keys.Count == 0)
            {
                names.Add(step.Name);
                continue;
            }

            JsonArray? list = at as JsonArray;
            JsonNode? entry = Entry(list, step);
            if (entry is null)
            {
                return null;
            }

            names.Add(string.Create(CultureInfo.InvariantCulture, $"{step.Name}[{list!.IndexOf(entry)}]"));
            at = entry;
        }

        return string.Join('.', names);
    }

    private static void Set(JsonObject at, IReadOnlyList<CaseStep> steps, int index, JsonNode? value)
    {
        CaseStep step = steps[index];
        if (index == steps.Count - 1 && step.Keys.Count == 0)
        {
            if (value is null)
            {
                at.Remove(step.Name);
            }
            else
            {
                at[step.Name] = value;
            }

            return;
        }

        JsonObject? below = step.Keys.Count == 0 ? Section(at, step.Name, value is not null) : Listed(at, step, value is not null);
        if (below is null)
        {
            return;
        }

        if (index < steps.Count - 1)
        {
            Set(below, steps, index + 1, value);
        }

        RemoveBare(at, step, below);
    }

    private static JsonObject? Section(JsonObject at, string name, bool make)
    {
        if (at[name] is JsonObject there)
        {
            return there;
        }

        if (!make)
        {
            return null;
        }

        JsonObject made = [];
        at[name] = made;
        return made;
    }

    private static JsonObject? Listed(JsonObject at, CaseStep step, bool make)
    {
        JsonArray? list = at[step.Name] as JsonArray;
        if (Entry(list, step) is JsonObject there)
        {
            return there;
        }

        if (!make)
        {
            return null;
        }

        if (list is null)
        {
            list = [];
            at[step.Name] = list;
        }

        JsonObject made = [];
        foreach ((string key, string word) in step.Keys)
        {
            made[key] = word;
        }

        list.Add((JsonNode)made);
        return made;
    }

    private static JsonNode? Entry(JsonArray? list, CaseStep step) => list?.FirstOrDefault(entry => entry is JsonObject o && step.Keys.All(
        pair => o[pair.Key] is JsonValue v && v.TryGetValue(out string? word) && word == pair.Value));

    /// <summary>A section without fields, or an entry with nothing but its keys, says nothing.</summary>
    private static void RemoveBare(JsonObject at, CaseStep step, JsonObject below)
    {
        if (step.Keys.Count == 0)
        {
            if (below.Count == 0 && step.Name != Needed)
            {
                at.Remove(step.Name);
            }
        }
        else if (below.Count == step.Keys.Count && at[step.Name] is JsonArray list)
        {
            list.Remove(below);
            if (list.Count == 0)
            {
                at.Remove(step.Name);
            }
        }
    }
}
