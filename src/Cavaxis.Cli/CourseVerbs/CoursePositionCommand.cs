using System.ComponentModel;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course position</c>: writes down where a cannula was seen to lie, and shows what changed since an image last showed it.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CoursePositionCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CoursePositionCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course position</c> takes.</summary>
    public sealed class Settings : OneCannulaSettings
    {
        /// <summary>Where the tip lies.</summary>
        [CommandOption("--tip <PLACE>")]
        [Description("Where the tip lies: LANDMARK:CM, such as icaj:-1.5; positive towards the feet.")]
        public string? Tip { get; init; }

        /// <summary>Where the return port lies.</summary>
        [CommandOption("--port <PLACE>")]
        [Description("Where the return port lies, in the same way.")]
        public string? Port { get; init; }

        /// <summary>Where the first drainage hole lies.</summary>
        [CommandOption("--first-hole <PLACE>")]
        [Description("Where the first drainage hole lies, in the same way.")]
        public string? FirstHole { get; init; }

        /// <summary>The view.</summary>
        [CommandOption("--view <TEXT>")]
        [Description("The view, in words.")]
        public string? View { get; init; }

        /// <summary>Name under which the image is found; no name of the patient.</summary>
        [CommandOption("--image <NAME>")]
        [Description("Name under which the image is found; no name of the patient.")]
        public string? Image { get; init; }
    }

    private protected override async Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        _ = CourseVisit.Lying((await visit.ReadAsync()).Course, settings.Cannula);
        return new PositionRead
        {
            Cannula = settings.Cannula,
            DepthCm = OptionText.Number(settings.Depth, "--depth", "cm"),
            TurnDeg = OptionText.Number(settings.Turn, "--turn", "degrees"),
            Tip = Place(settings.Tip, "--tip"),
            ReturnPort = Place(settings.Port, "--port"),
            FirstHole = Place(settings.FirstHole, "--first-hole"),
            SeenBy = OptionText.Given<PositionSight>(settings.SeenBy, "--seen-by"),
            View = settings.View,
            Image = settings.Image is null ? null : new ImageReference { Name = settings.Image },
            Remark = settings.Remark,
        };
    }

    private protected override async Task<Shown?> AfterAsync(CourseVisit visit, Settings settings) =>
        PositionSheet.Of([.. (await visit.ReadAsync()).Course.CannulaeIn.Where(c => c.Name == settings.Cannula)]);

    private static PortPlace? Place(string? text, string option)
    {
        if (text is null)
        {
            return null;
        }

        string[] parts = text.Split(':', 2, StringSplitOptions.TrimEntries);
        if (parts.Length != 2)
        {
            throw OptionText.Wrong(option, text, "LANDMARK:CM", "Write it such as icaj:-1.5.");
        }

        (double offset, double? sd) = OptionText.Pair(parts[1], option, "cm");
        return new PortPlace { Landmark = OptionText.Choice<CavalLandmark>(parts[0], option), OffsetCm = offset, SdCm = sd };
    }
}
