using System.Text;
using System.Text.Json;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities.Faults;
using Json.Schema;

namespace Cavaxis.Planning.Tests.Case;

public class CaseSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(CaseFileReader.Schema());

    [Fact]
    public void The_published_schema_is_what_the_types_give_now() =>
        PublishedText.Check("case.schema.json", static _ => CaseFileReader.Schema());

    [Fact]
    public void The_tables_in_the_documentation_are_what_the_types_give_now() => PublishedText.Check(
        "case-file.md",
        static text => PublishedText.Between(
            PublishedText.Between(text, "<!-- fields -->", "<!-- /fields -->", CaseFieldTable.Write(CaseFileReader.Schema())),
            "<!-- dimensions -->", "<!-- /dimensions -->", CaseFieldTable.Dimensions()));

    [Fact]
    public void The_example_in_the_documentation_can_be_read()
    {
        string text = File.ReadAllText(Path.Combine(RepositoryFolder.Docs, "case-file.md"));
        string example = text.Split("```json\n")[1].Split("```")[0];
        Assert.NotNull(CaseFileReader.Read(Encoding.UTF8.GetBytes(example)));
        Assert.True(Passes(Encoding.UTF8.GetBytes(example)));
    }

    [Fact]
    public void Every_demo_case_passes_the_schema()
    {
        foreach (string path in RepositoryFolder.DemoFiles)
        {
            Assert.True(Passes(File.ReadAllBytes(path)), path);
        }
    }

    // Faults that a schema of this kind cannot tell: contradictions between fields, an axis range by its dimension, names
    // given twice (a parser's matter) and limits of this reader.
    [Fact]
    public void The_schema_refuses_what_the_reader_refuses_field_by_field()
    {
        FaultCode[] told = [FaultCode.UnknownField, FaultCode.MissingField, FaultCode.NotAChoice, FaultCode.UnsupportedVersion, FaultCode.OutOfRange, FaultCode.WrongLength];
        int compared = 0;
        foreach ((string name, byte[] bytes) in MutatedCases.All(RepositoryFolder.DemoFiles).Where(static m => m.Bytes.Length < 20_000 && IsJson(m.Bytes)))
        {
            IReadOnlyList<InputFault> faults = Assert.Throws<InputFaultException>(() => CaseFileReader.Read(bytes)).Faults;
            if (faults.Any(f => told.Contains(f.Code)))
            {
                Assert.False(Passes(bytes), name);
                compared++;
            }
        }

        Assert.True(compared > 100, $"{compared} compared");
    }

    private static bool IsJson(byte[] bytes)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(bytes);
            return !bytes.AsSpan().StartsWith("{\""u8) || document.RootElement.EnumerateObject().DistinctBy(static p => p.Name).Count() == document.RootElement.EnumerateObject().Count();
        }
        catch (JsonException)
        {
            return false;
        }
    }

    private static bool Passes(byte[] bytes)
    {
        using JsonDocument document = JsonDocument.Parse(bytes);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
