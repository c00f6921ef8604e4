using System.ComponentModel;
using System.Globalization;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Course.RunSheets;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course step</c>: closes a step of the run sheet; at a hard stop the run sheet decides whether that may be written down.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseStepCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CourseStepCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course step</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>Number of the step.</summary>
        [CommandArgument(1, "<NUMBER>")]
        [Description("Number of the step.")]
        public required string Number { get; init; }

        /// <summary>What was seen.</summary>
        [CommandOption("--evidence <TEXT>")]
        [Description("What was seen.")]
        public string? Evidence { get; init; }

        /// <summary>View in which it was seen.</summary>
        [CommandOption("--view <VIEW>")]
        [Description("View in which it was seen: its words, or its place in the list of views that show it.")]
        public string? View { get; init; }

        /// <summary>Name under which the image is found; no name of the patient.</summary>
        [CommandOption("--image <NAME>")]
        [Description("Name under which the image is found; no name of the patient.")]
        public string? Image { get; init; }

        /// <summary>A second person who saw it.</summary>
        [CommandOption("--second <NAME>")]
        [Description("A second person who saw it.")]
        public string? Second { get; init; }

        /// <summary>What was done instead.</summary>
        [CommandOption("--instead <TEXT>")]
        [Description("What was done instead, where it was done otherwise.")]
        public string? Instead { get; init; }

        /// <summary>Why it was done otherwise.</summary>
        [CommandOption("--deviation <REASON>")]
        [Description("Why it was done otherwise.")]
        public string? Deviation { get; init; }

        /// <summary>Passes the step over.</summary>
        [CommandOption("--skip <REASON>")]
        [Description("Passes the step over, with the reason.")]
        public string? Skip { get; init; }
    }

    private protected override async Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        RunSheet sheet = (await visit.ReadAsync()).Course.RunSheet ?? throw OptionText.Wrong("PATIENT", visit.Patient, "a patient with a chosen plan", "Choose a plan first: `course plan`.", FaultCode.MissingField);
        int number = OptionText.Whole(settings.Number, "NUMBER", 1, sheet.Steps.Count);
        PlannedStep planned = sheet.Steps[number - 1].Planned;
        SecondPerson? second = settings.Second is null ? null : new SecondPerson { Name = settings.Second };
        if (settings.Skip is string reason)
        {
            return settings.Evidence is null && settings.Deviation is null && settings.Instead is null
                ? new StepSkipped { PlanEntry = checked((int)sheet.PlanEntry), Step = number, Action = planned.Action, Reason = reason, ConfirmedBy = second }
                : throw OptionText.Wrong("--skip", reason, "a step that is either passed over or done", "Leave out --skip, or what was seen.", FaultCode.Contradiction);
        }

        return new StepDone
        {
            PlanEntry = checked((int)sheet.PlanEntry),
            Step = number,
            Action = planned.Action,
            View = View(settings.View, planned),
            Seen = settings.Evidence,
            Image = settings.Image is null ? null : new ImageReference { Name = settings.Image },
            ConfirmedBy = second,
            Deviation = settings.Instead is null && settings.Deviation is null
                ? null
                : new StepDeviation { What = VerbText.Given(settings.Instead, "--instead"), Reason = VerbText.Given(settings.Deviation, "--deviation") },
            Remark = settings.Remark,
        };
    }

    private protected override async Task<Shown?> AfterAsync(CourseVisit visit, Settings settings) => SheetOfSteps.Of((await visit.ReadAsync()).Course);

    private static string? View(string? text, PlannedStep planned) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int place) && place >= 1 && place <= planned.ShowsIt.Count ? planned.ShowsIt[place - 1].Words : text;
}
