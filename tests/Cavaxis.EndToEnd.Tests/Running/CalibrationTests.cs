using System.Text.Json;
using Cavaxis.Cli.Commands;
using Cavaxis.EndToEnd.Tests.Programs;
using Json.Schema;

namespace Cavaxis.EndToEnd.Tests.Running;

public class CalibrationTests
{
    private static readonly string Arterial = DemoCase.PathOf("running-veno-arterial.json");

    [Fact]
    public void A_fit_tells_readings_numbers_and_what_stays_open()
    {
        Ended ended = CavaxisProcess.Run("calibrate", Arterial, "--members", "8", "--json");
        Assert.Equal((0, string.Empty), (ended.ExitCode, ended.Complaints));
        using JsonDocument answer = JsonDocument.Parse(ended.Out);
        Assert.True(JsonSchema.FromText(SchemaCommand.CalibrationSchema()).Evaluate(answer.RootElement).IsValid);
        JsonElement[] fitted = [.. answer.RootElement.GetProperty("parameters").EnumerateArray().Where(static p => p.GetProperty("isDetermined").GetBoolean())];
        Assert.NotEmpty(fitted);
        Assert.All(fitted, static p => Assert.True(Width(p.GetProperty("after")) < Width(p.GetProperty("before"))));
        JsonElement pressure = answer.RootElement.GetProperty("readings").EnumerateArray().Single(static r => r.GetProperty("field").GetString() == "observations.meanArterialPressureMmHg");
        Assert.InRange(pressure.GetProperty("fitted").GetDouble(), 62, 74);
        Assert.NotEmpty(answer.RootElement.GetProperty("notDetermined").EnumerateArray());
    }

    [Fact]
    public void What_if_less_flow_answers_in_bands()
    {
        Ended ended = CavaxisProcess.Run("whatif", Arterial, "--change", "flow=2.5", "--members", "8", "--json");
        Assert.Equal((0, string.Empty), (ended.ExitCode, ended.Complaints));
        using JsonDocument answer = JsonDocument.Parse(ended.Out);
        Assert.True(JsonSchema.FromText(SchemaCommand.WhatIfSchema()).Evaluate(answer.RootElement).IsValid);
        JsonElement flow = Of(answer, "pumpFlowLPerMin");
        Assert.True(flow.GetProperty("difference").GetProperty("high").GetDouble() < 0);
        JsonElement open = Of(answer, "aorticValveOpenPercent");
        Assert.True(open.GetProperty("difference").GetProperty("value").GetDouble() >= 0);
        Assert.True(open.GetProperty("after").GetProperty("low").GetDouble() <= open.GetProperty("after").GetProperty("high").GetDouble());
    }

    [Fact]
    public void An_added_volume_is_told_as_a_volume_and_the_bands_say_what_they_rest_on()
    {
        Ended ended = CavaxisProcess.Run("whatif", Arterial, "--change", "bloodVolumeMl=+200", "--members", "8");
        Assert.Equal((0, string.Empty), (ended.ExitCode, ended.Complaints));
        string words = string.Join(' ', ended.Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("If bloodVolumeMl is raised by 200 mL in every member", words, StringComparison.Ordinal);
        Assert.Matches(@"The bands rest on [4-8] of 8 members of the fit", words);
    }

    [Fact]
    public void When_fewer_than_half_of_the_members_settle_there_are_no_numbers()
    {
        // No ventilation and no sweep gas: carbon dioxide rises for ever.
        string[] question = ["whatif", Arterial, "--change", "ventilation=0", "--change", "sweep=0", "--members", "8"];
        Ended ended = CavaxisProcess.Run([.. question, "--json"]);
        Assert.Equal((1, string.Empty), (ended.ExitCode, ended.Complaints));
        using JsonDocument answer = JsonDocument.Parse(ended.Out);
        Assert.True(JsonSchema.FromText(SchemaCommand.WhatIfSchema()).Evaluate(answer.RootElement).IsValid);
        Assert.False(answer.RootElement.GetProperty("found").GetBoolean());
        Assert.Equal("notSettled", answer.RootElement.GetProperty("refused").GetString());
        Assert.Empty(answer.RootElement.GetProperty("quantities").EnumerateArray());
        Assert.Contains("of 8 members", answer.RootElement.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.InRange(answer.RootElement.GetProperty("leftOutBecause").GetArrayLength(), 1, 3);
        Ended told = CavaxisProcess.Run(question);
        Assert.Equal(1, told.ExitCode);
        Assert.Contains("NOT SETTLED: ", told.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Before and after", told.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fast")]
    [InlineData("+")]
    [InlineData("10 %x")]
    [InlineData("x")]
    public void A_change_in_no_known_form_is_refused_with_the_forms(string value)
    {
        (string code, string field, string told, string accepted) = Faults.Only(CavaxisProcess.Run("whatif", Arterial, "--change", $"flow={value}", "--json"));
        Assert.Equal(("wrongKind", "--change targetFlowLPerMin"), (code, field));
        Assert.Contains(value, told, StringComparison.Ordinal);
        Assert.All(new[] { "+NUMBER", "-NUMBER", "NUMBER%", "xNUMBER", "L/min" }, form => Assert.Contains(form, accepted, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("calibrate", "--members", "3")]
    [InlineData("calibrate", "--seed", "-1")]
    [InlineData("whatif", "--change", "moon=1")]
    [InlineData("whatif", "--change", "peep=99")]
    [InlineData("whatif", "--members", "20")]
    public void What_cannot_be_used_is_refused(string verb, string option, string value) =>
        Faults.Only(CavaxisProcess.Run(verb, Arterial, option, value, "--json"));

    [Fact]
    public void A_case_without_readings_cannot_be_fitted()
    {
        (string code, string field, _, _) = Faults.Only(CavaxisProcess.Run("calibrate", DemoCase.PathOf("nearly-everything-unknown.json"), "--json"));
        Assert.Equal(("missingField", "observations"), (code, field));
    }

    private static double Width(JsonElement estimate) => estimate.GetProperty("high").GetDouble() - estimate.GetProperty("low").GetDouble();

    private static JsonElement Of(JsonDocument answer, string name) =>
        answer.RootElement.GetProperty("quantities").EnumerateArray().Single(q => q.GetProperty("name").GetString() == name);
}
