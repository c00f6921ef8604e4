using System.Text;
using System.Text.Json.Nodes;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Tests.Case;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Tests.Rules;

public class RuleBookReaderTests
{
    private static readonly byte[] BuiltIn = File.ReadAllBytes(Path.Combine(RepositoryFolder.Root, "catalogue", "rulebook.json"));

    [Fact]
    public void The_published_file_is_the_built_in_book()
    {
        RuleBook read = RuleBookReader.Read(BuiltIn);
        Assert.Equal(RuleBookReader.BuiltIn.Limits, read.Limits);
        Assert.Equal(RuleBookReader.BuiltIn.Edition, read.Edition);
        Assert.Empty(RuleBookComparison.Loosened(read));
    }

    [Fact]
    public void Every_rule_has_a_rationale_and_a_source()
    {
        RuleBook book = RuleBookReader.BuiltIn;
        Assert.All(book.Limits, rule => Assert.True(rule.Rationale.Length > 10 && rule.Citation.Length > 5, rule.Name.ToString()));
        Assert.All(book.Zones, rule => Assert.True(rule.Rationale.Length > 10 && rule.Citation.Length > 5, rule.Id));
        Assert.All(book.Findings, rule => Assert.True(
            rule.Rationale.Length > 10 && rule.Citation.Length > 5 && rule.Says.Length > 10 && rule.Resolve.Length > 5, rule.Id));
        Assert.All(book.Criteria, rule => Assert.True(rule.Rationale.Length > 10, rule.Name.ToString()));
    }

    [Fact]
    public void Every_limit_can_be_asked_for_by_name() =>
        Assert.All(Enum.GetValues<LimitName>(), name => Assert.True(double.IsFinite(RuleBookReader.BuiltIn[name])));

    [Fact]
    public void A_missing_limit_is_named() => AssertFault(
        book => book["limits"]!.AsArray().RemoveAt(0), FaultCode.MissingField, "inletPressureMmHg");

    [Fact]
    public void A_limit_given_twice_is_named() => AssertFault(
        book => book["limits"]!.AsArray().Add(book["limits"]![2]!.DeepClone()), FaultCode.DuplicateField, "returnPressureMmHg");

    [Fact]
    public void A_zone_given_twice_is_named() => AssertFault(
        book => book["zones"]!.AsArray().Add(book["zones"]![0]!.DeepClone()), FaultCode.DuplicateField, "vv-drainage-tip");

    [Fact]
    public void A_finding_given_twice_is_named() => AssertFault(
        book => book["findings"]!.AsArray().Add(book["findings"]![0]!.DeepClone()), FaultCode.DuplicateField, "caval-filter");

    [Fact]
    public void A_criterion_given_twice_is_refused() => AssertFault(
        book => book["criteria"]!.AsArray().Add(book["criteria"]![0]!.DeepClone()), FaultCode.Contradiction, "fit");

    [Fact]
    public void A_criterion_whose_worst_is_its_best_is_refused() => AssertFault(
        book => book["criteria"]![0]!["worst"] = 1, FaultCode.Contradiction, "fit");

    [Fact]
    public void A_zone_of_a_port_without_the_port_is_refused() => AssertFault(
        book => Zone(book, "dual-return-port").AsObject().Remove("port"), FaultCode.MissingField, "(nothing)");

    [Fact]
    public void An_unknown_field_is_refused() => AssertFault(
        book => book["limitz"] = 1, FaultCode.UnknownField, null);

    [Fact]
    public void A_limit_that_is_no_number_is_refused() => AssertFault(
        book => book["limits"]![0]!["value"] = "-100", FaultCode.WrongKind, null);

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("null")]
    public void What_is_no_rule_book_is_refused(string text) =>
        Assert.NotEmpty(Assert.Throws<InputFaultException>(() => RuleBookReader.Read(Encoding.UTF8.GetBytes(text))).Faults);

    public static TheoryData<string, Action<JsonNode>> Loosenings => new()
    {
        { "limit inletPressureMmHg", book => Limit(book, "inletPressureMmHg")["value"] = -150 },
        { "limit cannulaToVeinStop", book => Limit(book, "cannulaToVeinStop")["value"] = 0.95 },
        { "limit fitProbabilityStop", book => Limit(book, "fitProbabilityStop")["value"] = 0.1 },
        { "limit inletPressureMmHg", book => (Limit(book, "inletPressureMmHg")["value"], Limit(book, "inletPressureMmHg")["stricter"]) = (-150, "neither") },
        { "zone dual-tip", book => Zone(book, "dual-tip")["toOffsetMm"] = 90 },
        { "zone dual-tip", book => Zone(book, "dual-tip")["fromOffsetMm"] = 20 },
        { "zone dual-tip", book => Zone(book, "dual-tip")["toLandmark"] = "renalVein" },
        { "zone dual-tip", book => Zone(book, "dual-tip")["role"] = "drainage" },
        { "zone dual-return-port", book => Zone(book, "dual-return-port")["part"] = "middle" },
        { "zone dual-superior-holes", book => Zone(book, "dual-superior-holes")["port"] = "return port" },
        { "zone vv-return-end", book => Zone(book, "vv-return-end")["configurations"] = new JsonArray("vvFemoralJugular") },
        { "zone dual-tip", book => book["zones"]!.AsArray().Remove(Zone(book, "dual-tip")) },
        { "finding caval-filter", book => Finding(book, "caval-filter")["grade"] = "warning" },
        { "finding caval-filter", book => Finding(book, "caval-filter")["routes"] = new JsonArray("axillaryGraft") },
        { "finding caval-filter", book => Finding(book, "caval-filter")["fact"] = "pacingLeads" },
        { "finding caval-filter", book => Finding(book, "caval-filter")["state"] = "unknown" },
        { "finding caval-filter", book => Finding(book, "caval-filter")["configurations"] = new JsonArray("vvFemoralJugular") },
        { "finding caval-filter", book => book["findings"]!.AsArray().Remove(Finding(book, "caval-filter")) },
    };

    [Theory]
    [MemberData(nameof(Loosenings))]
    public void What_is_looser_is_refused_without_who_and_why_and_listed_with_them(string named, Action<JsonNode> loosen)
    {
        JsonNode book = JsonNode.Parse(BuiltIn)!;
        loosen(book);
        InputFaultException fault = Assert.Throws<InputFaultException>(() => RuleBookReader.Read(Bytes(book)));
        Assert.Contains("changedBy", Assert.Single(fault.Faults).Field, StringComparison.Ordinal);

        book["changedBy"] = "programme lead";
        Assert.Throws<InputFaultException>(() => RuleBookReader.Read(Bytes(book)));
        book["changeReason"] = "local series of 40 patients";
        string sentence = Assert.Single(RuleBookComparison.Loosened(RuleBookReader.Read(Bytes(book))));
        Assert.StartsWith(named, sentence, StringComparison.Ordinal);
        Assert.Contains("programme lead: local series of 40 patients", sentence, StringComparison.Ordinal);
    }

    public static TheoryData<Action<JsonNode>> Tightenings => new()
    {
        book => Limit(book, "inletPressureMmHg")["value"] = -80,
        book => Limit(book, "cannulaToVeinStop")["value"] = 0.8,
        book => Limit(book, "targetSaturationPercent")["value"] = 85,
        book => Zone(book, "dual-tip")["toOffsetMm"] = 50,
        book => Finding(book, "caval-filter-unknown")["grade"] = "stop",
        book => Finding(book, "caval-filter")["routes"] = new JsonArray(),
    };

    [Theory]
    [MemberData(nameof(Tightenings))]
    public void What_is_stricter_is_accepted_without_a_word(Action<JsonNode> tighten)
    {
        JsonNode book = JsonNode.Parse(BuiltIn)!;
        tighten(book);
        Assert.Empty(RuleBookComparison.Loosened(RuleBookReader.Read(Bytes(book))));
    }

    private static void AssertFault(Action<JsonNode> spoil, FaultCode code, string? value)
    {
        JsonNode book = JsonNode.Parse(BuiltIn)!;
        spoil(book);
        InputFault fault = Assert.Single(Assert.Throws<InputFaultException>(() => RuleBookReader.Read(Bytes(book))).Faults);
        Assert.Equal(code, fault.Code);
        if (value is not null)
        {
            Assert.Contains(value, fault.Value, StringComparison.Ordinal);
        }
    }

    private static byte[] Bytes(JsonNode book) => Encoding.UTF8.GetBytes(book.ToJsonString());

    private static JsonNode Limit(JsonNode book, string name) => Named(book["limits"]!, "name", name);

    private static JsonNode Zone(JsonNode book, string id) => Named(book["zones"]!, "id", id);

    private static JsonNode Finding(JsonNode book, string id) => Named(book["findings"]!, "id", id);

    private static JsonNode Named(JsonNode list, string field, string name) => list.AsArray().First(n => (string?)n![field] == name)!;
}
