using Cavaxis.Bedside.Courses;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>A verb that shows something of a patient's course and writes nothing but the audit.</summary>
/// <typeparam name="T">What it takes.</typeparam>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public abstract class CourseCommand<T>(CommandOutput output, SecretReader secrets) : PersonCommand<T>(output, secrets)
    where T : OnePatientSettings
{
    private protected sealed override async Task DoAsync(RecordDesk desk, T settings)
    {
        CourseVisit visit = new(desk, settings.Patient, Output);
        Show(await visit.ReadAsync(), settings, visit.Now).Print(Output, settings.Json);
    }

    /// <summary>What is shown.</summary>
    /// <param name="reading">The course.</param>
    /// <param name="settings">The options.</param>
    /// <param name="now">The moment.</param>
    /// <returns>What is shown.</returns>
    private protected abstract Shown Show(CourseReading reading, T settings, DateTimeOffset now);
}
