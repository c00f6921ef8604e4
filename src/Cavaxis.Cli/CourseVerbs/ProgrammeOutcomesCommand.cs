using System.ComponentModel;
using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Programmes;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Outcomes;
using Cavaxis.Planning.Plans;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>programme outcomes</c>: outcomes of a programme with their intervals, who was treated, and the cumulative sums. Small numbers are called small.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class ProgrammeOutcomesCommand(CommandOutput output, SecretReader secrets) : PersonCommand<ProgrammeOutcomesCommand.Settings>(output, secrets)
{
    /// <summary>What <c>programme outcomes</c> takes.</summary>
    public sealed class Settings : PersonSettings
    {
        /// <summary>The programme.</summary>
        [CommandOption("--programme <NAME>")]
        [Description("The programme.")]
        public string? Programme { get; init; }

        /// <summary>Expected risk.</summary>
        [CommandOption("--expected-death <FRACTION>")]
        [Description("Expected risk of death before discharge for every case, such as 0.45 of a registry; without it there is no cumulative sum.")]
        public string? ExpectedDeath { get; init; }
    }

    private protected override async Task DoAsync(RecordDesk desk, Settings settings)
    {
        string programme = VerbText.Given(settings.Programme, "--programme");
        ProgrammeReading reading = Granted(
            await new ProgrammeCourses(desk.Patients, new CourseRecords(desk.Patients, TimeProvider.System), TimeProvider.System).ReadAsync(desk.Person, programme), programme);
        double? risk = OptionText.Number(settings.ExpectedDeath, "--expected-death", string.Empty);
        ProgrammeOutcomes outcomes = ProgrammeReview.Of(reading.Cases);
        CusumChart[] charts = risk is null ? [] : [ProgrammeCusum.Deaths(reading.Cases, CusumSetting.Worse, risk), ProgrammeCusum.Deaths(reading.Cases, CusumSetting.Better, risk)];
        bool small = outcomes.Mix.Cases < ProgrammeReview.FewestCases;
        new Shown(
            new
            {
                caution = CourseWords.Caution,
                programme,
                courses = reading.Courses.Count,
                leftOut = Enum.GetValues<LeftOutReason>().ToDictionary(static r => r, reading.LeftOut),
                reading.Incomplete,
                isSmall = small,
                outcomes,
                smallNumbers = ProgrammeReview.SmallSource,
                cumulativeSums = charts,
            },
            [
                string.Create(CultureInfo.InvariantCulture, $"Programme {programme}: {reading.Courses.Count} courses, {outcomes.Mix.Cases} counted. {outcomes.Mix.Words}"),
                .. Enum.GetValues<LeftOutReason>().Where(r => reading.LeftOut(r) > 0).Select(r => string.Create(CultureInfo.InvariantCulture, $"  left out: {reading.LeftOut(r)}, {PlainWords.FromName(r.ToString())}")),
                .. reading.Incomplete > 0 ? [string.Create(CultureInfo.InvariantCulture, $"  ! of {reading.Incomplete} courses not everything could be read; they are counted by what could. Run `record verify`.")] : Array.Empty<string>(),
                .. small ? [string.Create(CultureInfo.InvariantCulture, $"SMALL NUMBERS: fewer than {ProgrammeReview.FewestCases} cases; nothing here is fit for a comparison.")] : Array.Empty<string>(),
                .. outcomes.Shares.Select(static s => $"  {s.Words}"),
                .. charts.Length == 0 ? ["No cumulative sum without an expected risk: give --expected-death, such as that of a registry."] : charts.Select(static c => $"Cumulative sum of deaths (calculated): {c.Words} Limit: {c.Setting.Source}."),
                CourseWords.Caution,
            ]).Print(Output, settings.Json);
    }

    private static ProgrammeReading Granted(Records.Patients.PatientAnswer<ProgrammeReading> answer, string programme)
    {
        Refusal.Unless(answer.Decision, "programme", programme);
        return answer.Value!;
    }
}
