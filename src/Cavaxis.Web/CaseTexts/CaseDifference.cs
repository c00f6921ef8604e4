using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Cavaxis.Web.CaseTexts;

/// <summary>In which fields two cases differ.</summary>
public static class CaseDifference
{
    /// <summary>Paths of the fields that differ, in the order of the first text.</summary>
    /// <param name="one">A JSON object.</param>
    /// <param name="other">Another.</param>
    /// <returns>Paths such as <c>blood.arterialPh</c> and <c>vessels[0].depthMm</c>; empty where they say the same.</returns>
    /// <exception cref="JsonException">One of them is not JSON.</exception>
    public static IReadOnlyList<string> Of(string one, string other)
    {
        List<string> paths = [];
        Compare(JsonNode.Parse(one), JsonNode.Parse(other), string.Empty, paths);
        return paths;
    }

    private static void Compare(JsonNode? one, JsonNode? other, string path, List<string> paths)
    {
        switch (one, other)
        {
            case (JsonObject a, JsonObject b):
                foreach (string name in a.Select(static p => p.Key).Union(b.Select(static p => p.Key)))
                {
                    Compare(a[name], b[name], path.Length == 0 ? name : $"{path}.{name}", paths);
                }

                break;
            case (JsonArray a, JsonArray b):
                for (int i = 0; i < Math.Max(a.Count, b.Count); i++)
                {
                    Compare(i < a.Count ? a[i] : null, i < b.Count ? b[i] : null, string.Create(CultureInfo.InvariantCulture, $"{path}[{i}]"), paths);
                }

                break;
            default:
                if (!JsonNode.DeepEquals(one, other))
                {
                    paths.Add(path);
                }

                break;
        }
    }
}
