using Cavaxis.Anatomy.Body;
using Cavaxis.Bedside.Fhir;
using Cavaxis.Course.Observations;
using Cavaxis.Planning.Configurations;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using Hl7.Fhir.Model;

namespace Cavaxis.Bedside.Tests.Fhir;

public class FhirBundleTests
{
    private static readonly DateTimeOffset Start = new(2031, 2, 3, 4, 0, 0, TimeSpan.Zero);

    private static readonly FhirRecord Record = new(
        new Guid("5b0f7c62-58a4-4a6e-9c1e-0d4c2f1b7a11"), Start.AddDays(3), "patient-invented-1", Start, Sex.Female,
        [
            new("drainage", CannulaRole.Drainage, 25, "right femoral vein", 43.5, Start.AddMinutes(-30), Start.AddDays(6)),
            new("return", CannulaRole.VenousReturn, null, null, null, Start.AddMinutes(-10), null),
        ],
        [.. QuantityTable.All.Select(static (q, i) => new FhirReading(q.Quantity, Math.Round(q.Low + (0.37 * (q.High - q.Low)), 3), Start.AddMinutes(i), i % 3 == 0 ? q.UsualSd : null))]);

    [Fact]
    public void A_bundle_of_every_quantity_is_valid_by_the_published_profiles()
    {
        OperationOutcome outcome = SpecificationPackage.Validator.Validate(FhirBundle.Of(Record), null);
        string[] errors = [.. outcome.Issue.Where(static i => i.Severity is OperationOutcome.IssueSeverity.Error or OperationOutcome.IssueSeverity.Fatal).Select(static i => $"{i.Expression.FirstOrDefault()}: {i.Details?.Text}")];
        Assert.True(errors.Length == 0, string.Join('\n', errors));
        OperationOutcome moved = SpecificationPackage.Validator.Validate(FhirBundle.Of(Record with { LocalId = null, Sex = null }), null);
        Assert.True(moved.Success, moved.ToString());
    }

    [Fact]
    public void The_validator_finds_what_is_wrong()
    {
        Bundle bundle = FhirBundle.Of(Record);
        Observation heart = bundle.Entry.Select(static e => e.Resource).OfType<Observation>().First(static o => o.Code.Coding.Any(static c => c.Code == "8867-4"));
        Assert.IsType<Quantity>(heart.Value).Code = "per minute";
        heart.Category.Clear();
        OperationOutcome outcome = SpecificationPackage.Validator.Validate(bundle, null);
        Assert.False(outcome.Success);
    }

    [Theory]
    [InlineData("patient-invented-1")]
    [InlineData(null)]
    public void A_bundle_goes_out_and_comes_back_the_same(string? id)
    {
        Bundle bundle = FhirBundle.Of(Record with { LocalId = id });
        string json = FhirJson.Write(bundle);
        Bundle read = FhirJson.Read(json);
        Assert.True(bundle.IsExactly(read));
        Assert.Equal(json, FhirJson.Write(read));
        Observation[] observations = [.. read.Entry.Select(static e => e.Resource).OfType<Observation>()];
        Assert.Equal(Record.Readings.Select(static r => r.Value), observations.Select(static o => (double)Assert.IsType<Quantity>(o.Value).Value!.Value));
    }

    [Fact]
    public void A_de_identified_bundle_tells_neither_who_nor_when()
    {
        string json = FhirJson.Write(FhirBundle.Of(Record with { LocalId = null }));
        Assert.DoesNotContain("2031", json, StringComparison.Ordinal);
        Assert.DoesNotContain("patient-invented-1", json, StringComparison.Ordinal);
        Assert.Contains("ANONYED", json, StringComparison.Ordinal);
        Assert.Contains("1999-12-31T23:30:00", json, StringComparison.Ordinal);
        Assert.Contains("patient-invented-1", FhirJson.Write(FhirBundle.Of(Record)), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_bundles_share_no_identifier_and_one_is_the_same_bytes_again()
    {
        HashSet<string> UrlsOf(FhirRecord record) => [.. FhirBundle.Of(record).Entry.Select(static e => e.FullUrl!)];
        Assert.Equal(FhirJson.Write(FhirBundle.Of(Record)), FhirJson.Write(FhirBundle.Of(Record)));
        Assert.Empty(UrlsOf(Record).Intersect(UrlsOf(Record with { BundleId = Guid.NewGuid() })));
        Assert.Equal(FhirBundle.Of(Record).Entry.Count, UrlsOf(Record).Count);
    }

    [Fact]
    public void Every_unit_is_a_unit_of_the_published_list()
    {
        UcumList ucum = UcumList.Load();
        Assert.True(ucum.Count > 250);
        Assert.All(QuantityTable.All.Select(static q => q.Ucum).Append("[Ch]").Distinct(), unit => Assert.True(ucum.Has(unit), unit));
        Assert.All(new[] { "mmHg", "Lit/min", "mm[Hgg]", "", "/", "cmH2O", "bpm" }, unit => Assert.False(ucum.Has(unit), unit));
    }

    [Fact]
    public void Codes_said_to_be_seen_stand_in_the_published_package_and_no_code_stands_twice()
    {
        string lists = SpecificationPackage.TextOf("valuesets.xml") + SpecificationPackage.TextOf("profiles-others.xml");
        Assert.All(LoincTable.All.Where(static c => c.Certainty == Certainty.Seen), code =>
        {
            Assert.Contains($"\"{code.Code}\"", lists, StringComparison.Ordinal);
            Assert.True(code.Profile is null || lists.Contains($"\"{code.Profile}\"", StringComparison.Ordinal), code.Profile);
        });
        Assert.Equal(LoincTable.All.Count, LoincTable.All.Select(static c => c.Code).Distinct().Count());
        Assert.All(LoincTable.All, static code => Assert.True(HasCheckDigit(code.Code), code.Code));
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("not json")]
    [InlineData("""{"resourceType":"Patient"}""")]
    [InlineData("""{"resourceType":"Bundle","type":"collection","nonsense":1}""")]
    [InlineData("""{"resourceType":"Bundle","type":"no such type"}""")]
    [InlineData("""{"resourceType":"Bundle","type":"collection","entry":[{"resource":{"resourceType":"Observation","status":"final"}}]}""")]
    public void What_is_no_valid_bundle_is_refused_with_a_typed_fault(string json) =>
        Assert.Equal(FaultCode.MalformedText, Assert.Throws<InputFaultException>(() => FhirJson.Read(json)).Faults[0].Code);

    [Fact]
    public void Two_cannulae_of_one_name_and_a_number_that_is_none_are_refused()
    {
        Assert.Throws<InputFaultException>(() => FhirBundle.Of(Record with { Cannulae = [Record.Cannulae[0], Record.Cannulae[0]] }));
        Assert.Throws<InputFaultException>(() => FhirBundle.Of(Record with { Readings = [new(ObservedQuantity.HeartRatePerMin, double.NaN, Start)] }));
    }

    /// <summary>The last digit of a LOINC code is a check digit (mod 10, as on payment cards): a slip of the memory in one digit is found.</summary>
    private static bool HasCheckDigit(string code)
    {
        string[] parts = code.Split('-');
        int sum = parts[0].Reverse().Select(static (c, i) => (c - '0') * (i % 2 == 0 ? 2 : 1)).Sum(static d => (d / 10) + (d % 10));
        return parts[1] == ((10 - (sum % 10)) % 10).ToString(System.Globalization.CultureInfo.InvariantCulture);
    }
}
