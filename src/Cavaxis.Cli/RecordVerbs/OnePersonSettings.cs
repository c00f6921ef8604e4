using System.ComponentModel;
using Cavaxis.Records.Events;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>What verbs take that are about one person.</summary>
public class OnePersonSettings : PersonSettings
{
    /// <summary>The person.</summary>
    [CommandArgument(0, "<NAME>")]
    [Description("The person's name to sign in with.")]
    public required string Person { get; init; }

    /// <summary>The person's name, in small letters.</summary>
    public Identifier PersonId => Identifier.Of(Person.ToLowerInvariant(), "NAME");
}
