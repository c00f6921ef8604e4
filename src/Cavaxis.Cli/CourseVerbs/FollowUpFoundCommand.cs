using System.ComponentModel;
using Cavaxis.Anatomy.Body;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course follow-up found</c>: writes down what an examination after support found.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class FollowUpFoundCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<FollowUpFoundCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course follow-up found</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>Key of the item that it answers.</summary>
        [CommandOption("--item <KEY>")]
        [Description("Key of the item that it answers.")]
        public string? Item { get; init; }

        /// <summary>Veins that were looked at.</summary>
        [CommandOption("--vein <FINDING>")]
        [Description("A vein that was looked at: VEIN=CLOT or SIDE:VEIN=CLOT, clot being none, partial, complete or notSeen, such as right:commonFemoral=none; may be given several times.")]
        public string[] Veins { get; init; } = [];

        /// <summary>What else was found.</summary>
        [CommandOption("--finding <TEXT>")]
        [Description("What else was found.")]
        public string? Finding { get; init; }

        /// <summary>What was begun or changed.</summary>
        [CommandOption("--treatment <TEXT>")]
        [Description("What was begun or changed.")]
        public string? Treatment { get; init; }

        /// <summary>Name under which the images are found; no name of the patient.</summary>
        [CommandOption("--image <NAME>")]
        [Description("Name under which the images are found; no name of the patient.")]
        public string? Image { get; init; }
    }

    private protected override Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at) => Task.FromResult<CourseEvent>(new FollowUpFound
    {
        Item = settings.Item,
        Veins = [.. settings.Veins.Select(Vein)],
        Finding = settings.Finding ?? settings.Remark,
        Treatment = settings.Treatment,
        Image = settings.Image is null ? null : new ImageReference { Name = settings.Image },
    });

    private protected override async Task<Shown?> AfterAsync(CourseVisit visit, Settings settings) => FollowUpSheet.Of((await visit.ReadAsync()).Course, visit.Now);

    private static VeinFinding Vein(string text)
    {
        string[] parts = text.Split('=', StringSplitOptions.TrimEntries);
        string[] vein = parts[0].Split(':', StringSplitOptions.TrimEntries);
        return parts.Length == 2 && vein.Length <= 2
            ? new VeinFinding
            {
                Vein = OptionText.Choice<FollowUpVein>(vein[^1], "--vein"),
                Side = vein.Length == 2 ? OptionText.Choice<BodySide>(vein[0], "--vein") : null,
                Clot = OptionText.Choice<ClotFinding>(parts[1], "--vein"),
            }
            : throw OptionText.Wrong("--vein", text, "VEIN=CLOT or SIDE:VEIN=CLOT", "Write it such as right:commonFemoral=none.");
    }
}
