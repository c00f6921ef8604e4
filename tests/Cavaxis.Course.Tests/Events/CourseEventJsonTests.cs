using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Course.Tests.Events;

public class CourseEventJsonTests
{
    public static TheoryData<string> Kinds => [.. CourseEventTable.All.Select(static k => k.Text)];

    [Fact]
    public void Every_kind_of_event_stands_in_the_table_once_and_has_a_sample()
    {
        Type[] types = [.. typeof(CourseEvent).Assembly.GetTypes().Where(static t => t.IsSubclassOf(typeof(CourseEvent)))];
        Assert.Equal(types.Select(static t => t.Name).Order(StringComparer.Ordinal), CourseEventTable.All.Select(static k => k.Type.Name).Order(StringComparer.Ordinal));
        Assert.Equal(CourseEventTable.All.Select(static k => k.Type), Samples.All.Select(static s => s.GetType()));
        Assert.All(CourseEventTable.All, static k => Assert.True(k.Text.StartsWith("course.", StringComparison.Ordinal) || k.Text == CourseEventTable.WithdrawnText, k.Text));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void An_event_reads_back_as_it_was_written_with_every_field(string kind)
    {
        CourseEvent sample = Sample(kind);
        ReadOnlyMemory<byte> written = CourseEventJson.Write(sample);
        CourseEvent read = CourseEventJson.Read(kind, written.Span);
        Assert.Equal(sample.GetType(), read.GetType());
        Assert.Equal(Text(written), Text(CourseEventJson.Write(read)));
        JsonObject members = JsonNode.Parse(written.Span)!.AsObject();
        Assert.Equal(
            RecordShape.Of(sample.GetType()).Fields.Select(static f => f.Name).Order(StringComparer.Ordinal), members.Select(static m => m.Key).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_field_that_no_one_knows_is_named_with_its_path(string kind)
    {
        JsonObject members = Members(kind);
        members["colour"] = "red";
        InputFault fault = Assert.Single(Faults(kind, members));
        Assert.Equal((FaultCode.UnknownField, "colour"), (fault.Code, fault.Field));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_needed_field_that_lacks_is_named(string kind)
    {
        foreach (RecordField field in RecordShape.Of(CourseEventTable.Get(kind).Type).Fields.Where(static f => f.IsRequired))
        {
            JsonObject members = Members(kind);
            members.Remove(field.Name);
            Assert.Contains(Faults(kind, members), f => f.Code == FaultCode.MissingField && f.Field == field.Name);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_text_that_is_too_long_or_blank_is_named_and_the_longest_is_taken(string kind)
    {
        foreach (RecordField field in RecordShape.Of(CourseEventTable.Get(kind).Type).Fields.Where(static f => f.Kind == FieldKind.Text))
        {
            JsonObject members = Members(kind);
            members[field.Name] = new string('x', field.Longest + 1);
            Assert.Contains(Faults(kind, members), f => f.Code == FaultCode.WrongLength && f.Field == field.Name);
            members[field.Name] = "  ";
            Assert.Contains(Faults(kind, members), f => f.Field == field.Name);
            if (field.Longest > EventLimits.Hash && field.Name is not ("packSha256" or "answerSha256"))
            {
                members[field.Name] = new string('x', field.Longest);
                Assert.NotNull(CourseEventJson.Read(kind, Bytes(members)));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_number_beyond_its_bounds_is_named_and_the_bounds_are_taken(string kind)
    {
        foreach (RecordField field in RecordShape.Of(CourseEventTable.Get(kind).Type).Fields.Where(static f => f.Number is not null))
        {
            foreach (double bound in new[] { field.Number!.Low, field.Number.High })
            {
                JsonObject members = Members(kind);
                members[field.Name] = bound;
                Assert.NotNull(CourseEventJson.Read(kind, Bytes(members)));
                members[field.Name] = bound + (bound <= field.Number.Low ? -1 : 1);
                Assert.Contains(Faults(kind, members), f => f.Code == FaultCode.OutOfRange && f.Field == field.Name);
            }
        }
    }

    [Fact]
    public void Whatever_is_done_to_an_event_it_is_read_or_refused_with_faults_and_never_half_read() =>
        Gen.Select(Gen.Int[0, Samples.All.Count - 1], Gen.Int[0, 100_000], Gen.Byte, Gen.Int[0, 3]).Sample(
            static (which, where, letter, how) =>
            {
                CourseEvent sample = Samples.All[which];
                string kind = CourseEventTable.Of(sample).Text;
                List<byte> bytes = [.. CourseEventJson.Write(sample).Span];
                int at = where % bytes.Count;
                switch (how)
                {
                    case 0: bytes[at] = letter; break;
                    case 1: bytes.RemoveAt(at); break;
                    case 2: bytes.Insert(at, letter); break;
                    default: bytes.RemoveRange(at, Math.Min(bytes.Count - at, letter)); break;
                }

                try
                {
                    CourseEvent read = CourseEventJson.Read(kind, bytes.ToArray());
                    Assert.Equal(Text(CourseEventJson.Write(read)), Text(CourseEventJson.Write(CourseEventJson.Read(kind, CourseEventJson.Write(read).Span))));
                }
                catch (InputFaultException refused)
                {
                    Assert.NotEmpty(refused.Faults);
                }
            },
            iter: 1500);

    [Fact]
    public void A_value_beyond_the_range_of_its_quantity_is_named_with_unit_and_place()
    {
        Observed wrong = new() { Readings = [Reading.Of(ObservedQuantity.LactateMmolPerL, 2), Reading.Of(ObservedQuantity.PumpFlowLPerMin, 42)] };
        InputFault fault = Assert.Single(Assert.Throws<InputFaultException>(() => CourseEventJson.Write(wrong)).Faults);
        Assert.Equal((FaultCode.OutOfRange, "readings[1].value", "0 to 10 L/min"), (fault.Code, fault.Field, fault.Accepted));
    }

    [Fact]
    public void A_quantity_is_read_once_at_one_time()
    {
        Observed twice = new() { Readings = [Reading.Of(ObservedQuantity.LactateMmolPerL, 2), Reading.Of(ObservedQuantity.LactateMmolPerL, 3)] };
        Assert.Equal("readings[1].quantity", Assert.Single(Assert.Throws<InputFaultException>(() => CourseEventJson.Write(twice)).Faults).Field);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_number_that_is_not_finite_is_never_written(double value) =>
        Assert.Equal(FaultCode.OutOfRange, Assert.Single(Assert.Throws<InputFaultException>(() => CourseEventJson.Write(new StepRead(value).Event)).Faults).Code);

    [Fact]
    public void What_contradicts_itself_is_refused()
    {
        (string Field, CourseEvent Event)[] wrong =
        [
            ("depthCm", new PositionRead { Cannula = "a", SeenBy = PositionSight.SkinMark }),
            ("depthCm", new CannulaMoved { Cannula = "a", Reason = "b" }),
            ("readings", new Observed { Readings = [] }),
            ("readings", new AnticoagulationChecked { Readings = [] }),
            ("doseUnit", new AnticoagulationSet { Agent = AnticoagulationAgent.Heparin, Dose = 3 }),
            ("dose", new AnticoagulationSet { Agent = AnticoagulationAgent.Heparin, DoseUnit = "U/h" }),
            ("targets[0].low", new AnticoagulationSet { Agent = AnticoagulationAgent.Heparin, Targets = [new TargetRange { Quantity = ObservedQuantity.AntiXaIuPerMl, Low = 2, High = 1 }] }),
            ("flowLPerMin", new WeaningStepped { TrialEntry = 1 }),
            ("dueBy", new FollowUpPlanned { Item = "a", What = "b", DueFrom = "2031-02-03T04:05Z", DueBy = "2031-02-03T04:04Z" }),
            ("dueFrom", new FollowUpPlanned { Item = "a", What = "b", DueFrom = "2031-02-03T04:05", DueBy = "2031-02-03T04:06Z" }),
            ("veins", new FollowUpFound { Item = "a" }),
            ("steps[0].number", new PlanChosen { Name = "a", Configuration = Planning.Configurations.ConfigurationKind.VaFemoral, Steps = [new PlannedStep { Number = 2, Action = "b" }] }),
            ("import.fileSha256", new Observed { Readings = [Reading.Of(ObservedQuantity.LactateMmolPerL, 2)], Import = new ImportOrigin { FileSha256 = "AB", Rows = 1, Line = 2 } }),
            ("packSha256", new OpinionAsked { Pack = "a", Question = "b", PackSha256 = "c" }),
        ];
        Assert.All(wrong, static w => Assert.Equal(w.Field, Assert.Single(Assert.Throws<InputFaultException>(() => CourseEventJson.Write(w.Event)).Faults).Field));
    }

    [Fact]
    public void A_case_of_half_a_million_letters_is_taken_and_one_letter_more_is_not()
    {
        Assert.NotEmpty(CourseEventJson.Write(new CaseSaved { CaseText = new string('"', EventLimits.CaseText) }).ToArray());
        Assert.Throws<InputFaultException>(static () => CourseEventJson.Write(new CaseSaved { CaseText = new string('"', EventLimits.CaseText + 1) }));
    }

    [Fact]
    public void A_kind_that_no_one_knows_is_refused() =>
        Assert.Equal(FaultCode.NotAChoice, Assert.Single(Assert.Throws<InputFaultException>(static () => CourseEventJson.Read("course.unheard-of", "{}"u8)).Faults).Code);

    private static CourseEvent Sample(string kind) => Samples.All.Single(s => CourseEventTable.Of(s).Text == kind);

    private static JsonObject Members(string kind) => JsonNode.Parse(CourseEventJson.Write(Sample(kind)).Span)!.AsObject();

    private static byte[] Bytes(JsonObject members) => JsonSerializer.SerializeToUtf8Bytes(members);

    private static IReadOnlyList<InputFault> Faults(string kind, JsonObject members) =>
        Assert.Throws<InputFaultException>(() => CourseEventJson.Read(kind, Bytes(members))).Faults;

    private static string Text(ReadOnlyMemory<byte> bytes) => Encoding.UTF8.GetString(bytes.Span);

    private sealed record StepRead(double Value)
    {
        public CourseEvent Event => new WeaningStepped { TrialEntry = 1, FlowLPerMin = Value };
    }
}
