using System.Text.Json.Nodes;
using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Json;

/// <summary>Schema of input records from their shapes.</summary>
internal sealed class InputSchema : SchemaRoom
{
    /// <inheritdoc/>
    protected override JsonObject ObjectOf(Type type)
    {
        RecordShape shape = RecordShape.Of(type);
        JsonObject properties = [];
        foreach (RecordField field in shape.Fields)
        {
            properties[field.Name] = Field(field);
        }

        JsonObject node = new() { ["type"] = "object" };
        if (shape.Meaning is string meaning)
        {
            node["description"] = meaning;
        }

        node["properties"] = properties;
        node["required"] = new JsonArray([.. shape.Fields.Where(static f => f.IsRequired).Select(static f => (JsonNode)JsonValue.Create(f.Name))]);
        node["additionalProperties"] = false;
        return node;
    }

    private JsonObject Field(RecordField field)
    {
        JsonObject node = [];
        if (field.Meaning is string meaning)
        {
            node["description"] = meaning;
        }

        JsonObject content = field.TakesUnknown && field.Kind != FieldKind.Word ? OrUnknown(Plain(field)) : Plain(field)[0];
        foreach ((string name, JsonNode? part) in content)
        {
            node[name] = part?.DeepClone();
        }

        return node;
    }

    private static JsonObject OrUnknown(IEnumerable<JsonObject> ways) =>
        new() { ["oneOf"] = new JsonArray([.. ways, new JsonObject { ["const"] = JsonName.Unknown }]) };

    private JsonObject[] Plain(RecordField field) => field.Kind switch
    {
        FieldKind.Flag => [new() { ["type"] = "boolean" }],
        FieldKind.WholeNumber => [Number("integer", field.Number!)],
        FieldKind.Number => [Number("number", field.Number!)],
        FieldKind.Measurement => [Number("number", field.Number!), WithError(field.Number!)],
        FieldKind.Text => [Text(field)],
        FieldKind.Word => [Words(field.Words)],
        FieldKind.Record => [Refer(field.Type, JsonName.Of(field.Type.Name), () => ObjectOf(field.Type))],
        FieldKind.List => [new() { ["type"] = "array", ["maxItems"] = field.Longest, ["items"] = Plain(field.Element!)[0] }],
        _ => throw new InvalidOperationException($"{field.Kind} is not a kind of field."),
    };

    private static JsonObject Text(RecordField field)
    {
        JsonObject node = new() { ["type"] = "string" };
        if (field.NeedsContent)
        {
            node["minLength"] = 1;
        }

        node["maxLength"] = field.Longest;
        return node;
    }

    private static JsonObject Number(string type, NumberAttribute number) =>
        new() { ["type"] = type, ["minimum"] = number.Low, ["maximum"] = number.High };

    private static JsonObject WithError(NumberAttribute number)
    {
        JsonObject sd = Number("number", NumberBinder.SdBounds(number));
        sd["description"] = $"Standard deviation of the measurement; {NumberWords.Of(number.UsualSd)} is taken when left out.";
        return new()
        {
            ["type"] = "object",
            ["properties"] = new JsonObject { ["value"] = Number("number", number), ["sd"] = sd },
            ["required"] = new JsonArray("value"),
            ["additionalProperties"] = false,
        };
    }
}
