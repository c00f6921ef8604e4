using System.Globalization;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Running;
using Spectre.Console;

namespace Cavaxis.Cli.Output;

/// <summary>The numbers of the model as a table.</summary>
internal static class ParameterText
{
    /// <summary>Writes the table.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="listing">The numbers.</param>
    public static void Write(CommandOutput output, ParameterListing listing)
    {
        Table table = CommandOutput.Titled(
            FormattableString.Invariant($"Numbers of the circulation for {listing.MassKg:F1} kg of circulatory mass"), "name for --set", "value", "range", "unit", "origin");
        foreach (ParameterValue p in listing.Parameters)
        {
            table.AddRow(
                Markup.Escape(p.Name), Shown(p.Value), $"{Shown(p.Low)} to {Shown(p.High)}", Markup.Escape(p.Unit), JsonName.Of(p.Origin.ToString()));
        }

        output.Console.Write(table);
        output.Wrapped("Short names: ", string.Join(", ", listing.ShortNames.Select(static n => $"{n.Key} = {n.Value}")) + ".");
        output.Wrapped(string.Empty, "Meaning and source of every number: --json, or catalogue/circulation.json. A sign is relative (+500, -0.5), as is a percentage (80%, -20%); for a number that can be below zero a sign is its own.");
    }

    private static string Shown(double value) => value.ToString("G4", CultureInfo.InvariantCulture);
}
