using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course move</c>: writes down that a cannula was moved, and shows what that changes.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseMoveCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CourseMoveCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course move</c> takes.</summary>
    public sealed class Settings : OneCannulaSettings
    {
        /// <summary>Why.</summary>
        [CommandOption("--reason <TEXT>")]
        [Description("Why.")]
        public string? Reason { get; init; }
    }

    private protected override async Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        double? from = CourseVisit.Lying((await visit.ReadAsync()).Course, settings.Cannula).DepthCm;
        return new CannulaMoved
        {
            Cannula = settings.Cannula,
            FromDepthCm = from,
            DepthCm = OptionText.Number(settings.Depth, "--depth", "cm"),
            TurnDeg = OptionText.Number(settings.Turn, "--turn", "degrees"),
            Reason = VerbText.Given(settings.Reason, "--reason"),
            SeenBy = OptionText.Maybe<PositionSight>(settings.SeenBy, "--seen-by"),
            Remark = settings.Remark,
        };
    }

    private protected override async Task<Shown?> AfterAsync(CourseVisit visit, Settings settings) =>
        PositionSheet.Of([.. (await visit.ReadAsync()).Course.CannulaeIn.Where(c => c.Name == settings.Cannula)]);
}
