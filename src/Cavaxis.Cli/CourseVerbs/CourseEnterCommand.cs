using System.ComponentModel;
using System.Text;
using System.Text.Json.Nodes;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course enter</c>: writes down anticoagulation, imaging or a note, field by field.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseEnterCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CourseEnterCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course enter</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>anticoagulation-set.</summary>
        [CommandArgument(1, "<KIND>")]
        [Description("anticoagulation-set, anticoagulation-checked, imaging-done or note-written.")]
        public required string Kind { get; init; }

        /// <summary>The fields.</summary>
        [CommandOption("--set <FIELD=VALUE>")]
        [Description("A field of the entry, such as agent=unfractionatedHeparin; a value that is JSON is taken as such; may be given several times.")]
        public string[] Sets { get; init; } = [];
    }

    private const string OfTheCourse = "course.";
    private static readonly string[] Kinds = ["anticoagulation-set", "anticoagulation-checked", "imaging-done", "note-written"];

    private protected override Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at) =>
        Kinds.Contains(settings.Kind)
            ? Task.FromResult(CourseEventJson.Read(OfTheCourse + settings.Kind, Encoding.UTF8.GetBytes(FieldText.Set(new JsonObject(), settings.Sets).ToJsonString())))
            : throw OptionText.Wrong("KIND", settings.Kind, string.Join(", ", Kinds), "The other kinds of entries have verbs of their own.", Quantities.Faults.FaultCode.NotAChoice);
}
