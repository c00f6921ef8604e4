using System.Globalization;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Records.Access;
using Spectre.Console;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary><c>people list</c>: the people of the programmes whose people one keeps, with their roles there.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class PeopleListCommand(CommandOutput output, SecretReader secrets) : PersonCommand<PersonSettings>(output, secrets)
{
    private protected override async Task DoAsync(RecordDesk desk, PersonSettings settings)
    {
        desk.RequireSomewhere(Verb.KeepPeople, "people");
        HashSet<string> programmes = [.. desk.ProgrammesWith(Verb.KeepPeople)];
        PersonSheet[] people = [.. (await desk.People.ListAsync()).Where(p => p.Roles.Keys.Any(programmes.Contains)).Select(p => PersonSheet.Of(p, programmes))];
        if (settings.Json)
        {
            Output.Json(people);
            return;
        }

        Table table = new Table().Border(TableBorder.Simple).AddColumns("sign-in name", "name", "roles", string.Empty);
        foreach (PersonSheet person in people)
        {
            table.AddRow(
                Markup.Escape(person.Id), Markup.Escape(person.Name),
                Markup.Escape(string.Join(", ", person.Roles.Select(static r => string.Create(CultureInfo.InvariantCulture, $"{r.Key}: {r.Value}")))),
                person.Active ? string.Empty : "closed out");
        }

        Output.Console.Write(table);
    }
}
